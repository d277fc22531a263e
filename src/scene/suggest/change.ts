import type { PathStep } from "../errors"
import type { Scene } from "../schema"
import { slotNamed } from "../slots"

/** One number of a scene set anew, in the file's unit. */
export interface SlotChange {
  readonly key: string
  readonly value: number
}

/**
 * The scene with some of its numbers set anew. What does not change is shared with the old scene, so that work
 * remembered for an unchanged bow is found again. Values are not checked. An unknown key throws RangeError.
 */
export function withValues(scene: Scene, changes: readonly SlotChange[]): Scene {
  return changes.reduce((changed, { key, value }) => {
    const slot = slotNamed(scene, key)
    if (slot === undefined) throw new RangeError(`the scene has no number called ${key}`)
    return replaced(changed, slot.address, value) as Scene
  }, scene)
}

function replaced(here: unknown, address: readonly PathStep[], value: number): unknown {
  const [step, ...rest] = address
  if (step === undefined) return value
  if (Array.isArray(here)) return here.map((entry, i) => (i === step ? replaced(entry, rest, value) : entry))
  const owner = here as Readonly<Record<PathStep, unknown>>
  return { ...owner, [step]: replaced(owner[step], rest, value) }
}
