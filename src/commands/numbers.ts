import { twinKey } from "../scene/address"
import { failure, type PathStep, pathText } from "../scene/errors"
import { rangeMessage } from "../scene/messages"
import type { Scene } from "../scene/schema"
import { type Slot, slotNamed } from "../scene/slots"
import type { Bench } from "../state/bench"
import type { Command } from "./command"

export interface NumberChange {
  /** A slot's key. */
  readonly key: string
  /** In the file's unit. */
  readonly value: number
}

/**
 * Sets numbers of the scene by slot key, all or none. A value off its range is refused with the range named. With
 * paired arms, what is set on one arm of a V-bar is set on the other where it has the same number.
 */
export const setNumbers: Command<{ label: string; changes: readonly NumberChange[]; paired?: boolean }> = {
  id: "set-numbers",
  label: "Set numbers",
  run(bench, { label, changes, paired }) {
    const { scene, preferences } = bench.store.getState()
    const wanted = (paired ?? preferences.pairArms) ? withTwins(scene, changes) : changes
    const slots: { slot: Slot; value: number }[] = []
    for (const { key, value } of wanted) {
      const slot = slotNamed(scene, key)
      if (slot === undefined) {
        return failure({ code: "not-allowed", path: key, message: "this scene has no such number" })
      }
      const { field } = slot
      const allowed = value >= field.min && value <= field.max && (!field.whole || Number.isInteger(value))
      if (!allowed) {
        return failure({ code: "not-allowed", path: pathText(slot.address), message: rangeMessage(field, value) })
      }
      slots.push({ slot, value })
    }
    return bench.change(label, (draft) => {
      for (const { slot, value } of slots) put(draft, slot.address, value)
    })
  },
}

/** Sets one number. */
export const setNumber: Command<NumberChange> = {
  id: "set-number",
  label: "Set a number",
  run(bench, { key, value }) {
    const slot = slotNamed(bench.store.getState().scene, key)
    return setNumbers.run(bench, { label: slot === undefined ? key : slotTitle(slot), changes: [{ key, value }] })
  },
}

/** Takes away a number that a part may do without, such as a rod's rating. */
export const clearNumber: Command<{ key: string }> = {
  id: "clear-number",
  label: "Clear a number",
  run(bench, { key }) {
    const slot = slotNamed(bench.store.getState().scene, key)
    if (slot === undefined || slot.absent) return { ok: true, value: undefined }
    return bench.change(`${slotTitle(slot)} cleared`, (draft) => {
      const [owner, last] = holder(draft, slot.address)
      delete owner[last]
    })
  },
}

/** The nearest allowed value of a slot, for handles and arrow keys, which cannot type a wrong one. */
export function allowedValue(slot: Slot, value: number): number {
  const { min, max, whole } = slot.field
  const inside = Math.min(max, Math.max(min, value))
  return whole ? Math.round(inside) : inside
}

/** "front rod, length": how history and announcements call a slot. */
export const slotTitle = (slot: Slot): string => `${slot.owner.replaceAll("/", " ")}, ${slot.label}`

function withTwins(scene: Scene, changes: readonly NumberChange[]): NumberChange[] {
  const named = new Set(changes.map(({ key }) => key))
  return changes.flatMap((change) => {
    const twin = twinKey(change.key)
    if (twin === null || named.has(twin) || slotNamed(scene, twin) === undefined) return [change]
    return [change, { key: twin, value: change.value }]
  })
}

type Holder = Record<PathStep, unknown>

function holder(scene: object, address: readonly PathStep[]): [Holder, PathStep] {
  let here = scene as Holder
  for (const step of address.slice(0, -1)) here = here[step] as Holder
  return [here, address.at(-1)!]
}

function put(scene: object, address: readonly PathStep[], value: number): void {
  const [owner, last] = holder(scene, address)
  owner[last] = value
}

/** Runs `act` as one gesture: all its changes are one undo step. */
export function asOneStep(bench: Bench, label: string, act: () => void): void {
  bench.begin(label)
  act()
  bench.commit()
}
