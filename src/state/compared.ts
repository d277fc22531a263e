import { evaluate, type Evaluation } from "../scene/evaluate"
import { type Figures, figuresOf } from "../scene/figures"
import type { Pose, Scene } from "../scene/schema"
import type { BenchState } from "./bench"

/** A setup beside the one on the bench, to be compared with it. */
export interface OtherSetup {
  readonly name: string
  readonly scene: Scene
  /** It stays as it is held itself: its draw, slope and cant may be all that is compared. */
  readonly inItsOwnPose?: true
}

/** The same setup, as a rule held as the bow on the bench is held, so that the two differ by nothing else. */
export interface Beside extends OtherSetup {
  readonly evaluation: Evaluation
  readonly figures: Figures
}

type Shown = Pick<BenchState, "scene" | "compared" | "peeked">

const known = new WeakMap<OtherSetup, { readonly pose: Pose; readonly beside: Beside | null }>()

/**
 * The setup shown beside the present one: what is looked at in a list for the moment, else what is held to compare. It
 * is worked out again only when the pose is another. Null for none, and for one whose limbs cannot take the pose.
 */
export function beside({ scene, compared, peeked }: Shown): Beside | null {
  const other = peeked ?? compared
  if (other === null) return null
  const { pose } = other.inItsOwnPose ? other.scene : scene
  const found = known.get(other)
  if (found?.pose === pose) return found.beside
  const posed = evaluate({ ...other.scene, pose })
  const made = posed.ok ? { ...other, evaluation: posed.value, figures: figuresOf(posed.value) } : null
  known.set(other, { pose, beside: made })
  return made
}
