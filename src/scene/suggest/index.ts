import type { Evaluation } from "../evaluate"
import type { Scene } from "../schema"
import { rigSensitivities, type Sensitivity } from "../sensitivity"
import { bestFor } from "./search"
import type { Suggestion } from "./suggestion"
import { targetStates } from "./targets"

export { type ChainEdit, type SlotChange, withValues } from "./change"
export type { KnobKind } from "./knobs"
export type { StructureKind } from "./structures"
export { changedBy, type NumberChange, type PartChange, type RigChange, type Suggestion } from "./suggestion"
export { type TargetKey, type TargetState, targetKeys, targetStates } from "./targets"

/**
 * For every target that is missed, in the order of `targetKeys`, up to three single changes of the rig that bring
 * it inside, in whole steps of the field and each really evaluated. Those that keep every met target come first,
 * then the cheapest (`costs`). Only what a coach turns at the bench is touched: discs, V-bar arms, lengths of rods
 * and extenders, whose masses are taken as unchanged, and an extender or a stack of discs put in or taken out;
 * nothing leaves its field's range, and no rod is loaded past its rating. No suggestion for a target means that no
 * single such change is enough.
 *
 * `rates` gives the first guesses; pass them where they are already known.
 */
export function suggestions(
  scene: Scene,
  evaluation: Evaluation,
  rates: ReadonlyMap<string, Sensitivity> = rigSensitivities(scene, evaluation),
): Suggestion[] {
  const states = targetStates(scene, evaluation)
  const missed = states.filter(({ missedBy }) => missedBy !== 0)
  return missed.flatMap((state) => bestFor({ scene, evaluation, states, state }, rates))
}
