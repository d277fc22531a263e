import type { Evaluation } from "../scene/evaluate"
import type { Played } from "../state/played"
import { contentsOf } from "./contents"
import { arrangeFrames, type Frames, type Page, stillGood } from "./frames"

/** Keeps the frames steady from one state to the next. */
export interface Framing {
  /** `held`: a handle is being dragged, and the page must not move under it. */
  frames(evaluation: Evaluation, page: Page, held: boolean, also?: Also): Frames
}

/** What else there must be room for. */
export interface Also {
  readonly played: Played | null
  readonly other: Evaluation | null
}

const NOTHING: Also = { played: null, other: null }

export function createFraming(): Framing {
  let kept: { readonly frames: Frames; readonly page: Page; readonly of: unknown; readonly other: unknown } | null =
    null
  return {
    frames(evaluation, page, held, { played, other } = NOTHING) {
      // All of a motion is drawn in the same frames.
      const of = played?.room ?? evaluation
      const samePage = kept?.page.width === page.width && kept.page.height === page.height
      if (kept !== null && samePage && (held || (kept.of === of && kept.other === other))) return kept.frames
      const { side, top } = contentsOf(evaluation, played, other)
      const best = arrangeFrames(page, side, top)
      const frames = kept !== null && samePage && stillGood(kept.frames, best, page, side, top) ? kept.frames : best
      kept = { frames, page, of, other }
      return frames
    },
  }
}
