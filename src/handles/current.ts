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

interface Known {
  readonly mount: string | null
  readonly touchable: BenchState["touchable"]
  readonly holds: Holds
}

const known = new WeakMap<Evaluation, Known>()

/** The handles and switches of the scene on the bench, worked out once an evaluation, chosen mount and what may be touched. */
export function holds({ scene, evaluation, selected, touchable }: BenchState): Holds {
  const mount = selected?.startsWith("mounts/") ? selected : null
  const found = known.get(evaluation)
  if (found?.mount === mount && found.touchable === touchable) return found.holds
  const all = handlesOf(scene, evaluation, mount)
  const handles = touchable === null ? all : all.filter(({ key }) => touchable.includes(key))
  const switches = touchable === null ? extenderSwitches(scene, evaluation) : []
  const shape = [...handles.map(({ key, label }) => `${key} ${label}`), ...switches.map(({ label }) => label)].join(
    "\n",
  )
  const made: Holds = { handles, switches, shape }
  known.set(evaluation, { mount, touchable, holds: made })
  return made
}

export const handleNamed = (state: BenchState, key: string): Handle | undefined =>
  holds(state).handles.find((handle) => handle.key === key)
