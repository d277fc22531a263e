import type { Vec3 } from "../core/solids"
import type { Evaluation } from "../scene/evaluate"
import type { BenchState } from "./bench"

/** One moment of a motion that the picture plays: the scene and its numbers know nothing of it. */
export interface Played {
  /** What was on the bench when it began; once anything changes there, the motion is over. */
  readonly of: Evaluation
  /** The same with the bow and its swing weights where the motion has them. */
  readonly evaluation: Evaluation
  /** The slope of the hillside that the bow is raised or lowered to, degrees. */
  readonly hillDeg: number
  /** The bow at the ends and the middle of its way, the same for the whole motion: what the picture must have room for. */
  readonly room: readonly Evaluation[]
  /** Where the swing weights would be if they were locked: from the hinge along a unit direction, bow axes. */
  readonly locked: readonly { readonly path: string; readonly direction: Vec3 }[]
}

type Shown = Pick<BenchState, "evaluation" | "played">

/** The motion that the picture plays now. */
export const playedNow = ({ evaluation, played }: Shown): Played | null =>
  played !== null && played.of === evaluation ? played : null

/** What the picture shows: the scene as held, or the moment of the motion it plays. */
export const pictured = (state: Shown): Evaluation => playedNow(state)?.evaluation ?? state.evaluation
