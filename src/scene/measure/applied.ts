import type { Evaluation } from "../evaluate"
import type { Scene } from "../schema"
import { fitScene } from "./fitScene"
import { figureSpreads, type Spreads } from "./spread"

/** The ± of an evaluated scene's numbers; null unless its riser is the one its readings give. */
export function appliedSpreads(scene: Scene, evaluation: Evaluation): Spreads | null {
  const fit = fitScene(scene)
  return fit?.ok && fit.value.applied ? figureSpreads(evaluation, fit.value) : null
}
