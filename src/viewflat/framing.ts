import type { Evaluation } from "../scene/evaluate"
import { contentsOf } from "./contents"
import { arrangeFrames, type Frames, type Page, stillGood } from "./frames"

/** Keeps the frames steady from one state to the next. */
export interface Framing {
  /** `held`: a handle is being dragged, and the page must not move under it. */
  frames(evaluation: Evaluation, page: Page, held: boolean): Frames
}

export function createFraming(): Framing {
  let kept: { readonly frames: Frames; readonly page: Page; readonly evaluation: Evaluation } | null = null
  return {
    frames(evaluation, page, held) {
      const samePage = kept?.page.width === page.width && kept.page.height === page.height
      if (kept !== null && samePage && (held || kept.evaluation === evaluation)) return kept.frames
      const { side, top } = contentsOf(evaluation)
      const best = arrangeFrames(page, side, top)
      const frames = kept !== null && samePage && stillGood(kept.frames, best, page, side, top) ? kept.frames : best
      kept = { frames, page, evaluation }
      return frames
    },
  }
}
