import type { Address } from "../address"
import type { PathStep } from "../errors"
import type { Element, Scene } from "../schema"
import { slotNamed } from "../slots"

/** One number of a scene set anew, in the file's unit. */
export interface SlotChange {
  readonly key: string
  readonly value: number
}

/** One part put into a chain, or taken out of it. */
export interface ChainEdit {
  readonly chain: Address
  /** The chain's name, `front` or `front/vbar/left`. */
  readonly path: string
  /** Place in the chain: the new part goes before the element here, or the element here goes. */
  readonly index: number
  /** The new part; null takes the element at `index` out. */
  readonly put: Element | null
}

/**
 * The scene with some of its numbers set anew. What does not change is shared with the old scene, so that work
 * remembered for an unchanged bow is found again. Values are not checked. An unknown key throws RangeError.
 */
export function withValues(scene: Scene, changes: readonly SlotChange[]): Scene {
  return changes.reduce((changed, { key, value }) => {
    const slot = slotNamed(scene, key)
    if (slot === undefined) throw new RangeError(`the scene has no number called ${key}`)
    return replaced(changed, slot.address, () => value) as Scene
  }, scene)
}

/** The scene with parts put in and taken out, one after the other; shares what stays, as `withValues` does. */
export const withEdits = (scene: Scene, edits: readonly ChainEdit[]): Scene =>
  edits.reduce((changed, edit) => {
    return replaced(changed, edit.chain, (chain) => edited(chain as Element[], edit)) as Scene
  }, scene)

const edited = (chain: readonly Element[], { index, put }: ChainEdit): Element[] => [
  ...chain.slice(0, index),
  ...(put === null ? [] : [put]),
  ...chain.slice(put === null ? index + 1 : index),
]

function replaced(here: unknown, address: readonly PathStep[], by: (old: unknown) => unknown): unknown {
  const [step, ...rest] = address
  if (step === undefined) return by(here)
  if (Array.isArray(here)) return here.map((entry, i) => (i === step ? replaced(entry, rest, by) : entry))
  const owner = here as Readonly<Record<PathStep, unknown>>
  return { ...owner, [step]: replaced(owner[step], rest, by) }
}
