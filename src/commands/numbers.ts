import { slotTitle } from "../describe/partNames"
import { twinKey } from "../scene/address"
import { failure, type PathStep, pathText, type Result } from "../scene/errors"
import { rangeWords } from "../scene/messages"
import type { Scene } from "../scene/schema"
import { type Slot, slotNamed } from "../scene/slots"
import { explained } from "../scene/words"
import type { Bench, Recipe } from "../state/bench"
import { standingRules } from "../state/check"
import { acts } from "../words/acts"
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
  run(bench, { label, changes, paired }) {
    const { scene, preferences } = bench.store.getState()
    const wanted = (paired ?? preferences.pairArms) ? withTwins(scene, changes) : changes
    const slots: { slot: Slot; value: number }[] = []
    for (const { key, value } of wanted) {
      const slot = slotNamed(scene, key)
      if (slot === undefined) return noSuchNumber(key)
      const { field } = slot
      const allowed = value >= field.min && value <= field.max && (!field.whole || Number.isInteger(value))
      if (!allowed) {
        return failure(explained("not-allowed", pathText(slot.address), rangeWords(field, value)))
      }
      slots.push({ slot, value })
    }
    const recipe: Recipe = (draft) => {
      for (const { slot, value } of slots) put(draft, slot.address, value)
    }
    return bench.change(label, recipe, standingRules)
  },
}

/** Sets one number. */
export const setNumber: Command<NumberChange> = {
  id: "set-number",
  run(bench, { key, value }) {
    const { scene } = bench.store.getState()
    const slot = slotNamed(scene, key)
    const label = slot === undefined ? key : slotTitle(scene, slot)
    return setNumbers.run(bench, { label, changes: [{ key, value }] })
  },
}

/**
 * Takes away a number that a part may do without, such as a rod's rating; one that has a default goes back to it. A
 * number the part needs is not taken away: the refusal says that it is missing. Paired arms lose it together.
 */
export const clearNumber: Command<{ key: string }> = {
  id: "clear-number",
  run(bench, { key }) {
    const { scene, preferences } = bench.store.getState()
    const slot = slotNamed(scene, key)
    if (slot === undefined) return noSuchNumber(key)
    const { field, address } = slot
    if (field.fallback === undefined && !field.optional) {
      return failure(explained("missing", pathText(address), rangeWords(field, undefined)))
    }
    const twin = preferences.pairArms ? twinSlot(scene, slot) : undefined
    return bench.change(acts.cleared(slotTitle(scene, slot)), (draft) => {
      for (const { address, field, absent } of twin === undefined ? [slot] : [slot, twin]) {
        // The scene on the bench has its defaults written out, as a file that has been read has.
        if (field.fallback !== undefined) put(draft, address, field.fallback)
        else if (!absent) take(draft, address)
      }
    })
  },
}

/** The nearest allowed value of a slot, for handles and arrow keys, which cannot type a wrong one. */
export function allowedValue({ field }: Pick<Slot, "field">, value: number): number {
  const { min, max, whole } = field
  const inside = Math.min(max, Math.max(min, value))
  return whole ? Math.round(inside) : inside
}

const noSuchNumber = (key: string): Result<never> =>
  failure({ code: "not-allowed", path: key, message: acts.noSuchNumber })

/** The same number on the other arm; none off the rig, where an accessory may be called "left" and another "right". */
function twinSlot(scene: Scene, { key, address }: Slot): Slot | undefined {
  const twin = address[0] === "rig" ? twinKey(key) : null
  return twin === null ? undefined : slotNamed(scene, twin)
}

function withTwins(scene: Scene, changes: readonly NumberChange[]): NumberChange[] {
  const named = new Set(changes.map(({ key }) => key))
  return changes.flatMap((change) => {
    const slot = slotNamed(scene, change.key)
    const twin = slot === undefined ? undefined : twinSlot(scene, slot)
    if (twin === undefined || named.has(twin.key)) return [change]
    return [change, { key: twin.key, value: change.value }]
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

function take(scene: object, address: readonly PathStep[]): void {
  const [owner, last] = holder(scene, address)
  delete owner[last]
}

/** Runs `act` as one gesture: all its changes are one undo step. */
export function asOneStep(bench: Bench, label: string, act: () => void): void {
  bench.begin(label)
  act()
  bench.commit()
}
