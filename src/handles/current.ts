import { type ExtenderSwitch, extenderSwitches } from "../picture/extenders"
import type { Handle } from "../picture/handle"
import { handlesOf } from "../picture/handles"
import type { Evaluation } from "../scene/evaluate"
import type { BenchState } from "../state/bench"

/** What there is to take hold of in the picture. */
export interface Holds {
  readonly handles: readonly Handle[]
  readonly switches: readonly ExtenderSwitch[]
  /** The same for two states that need the same elements, whatever their values. */
  readonly shape: string
}

const known = new WeakMap<Evaluation, Holds>()

/** The handles and switches of the scene on the bench, worked out once an evaluation. */
export function holds({ scene, evaluation }: BenchState): Holds {
  const found = known.get(evaluation)
  if (found !== undefined) return found
  const handles = handlesOf(scene, evaluation)
  const switches = extenderSwitches(scene, evaluation)
  const shape = [...handles.map(({ key, label }) => `${key} ${label}`), ...switches.map(({ label }) => label)].join(
    "\n",
  )
  const made: Holds = { handles, switches, shape }
  known.set(evaluation, made)
  return made
}

export const handleNamed = (state: BenchState, key: string): Handle | undefined =>
  holds(state).handles.find((handle) => handle.key === key)
