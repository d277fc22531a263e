import { partTitle } from "../describe/partNames"
import type { NumberField } from "../scene/fields"
import type { Scene } from "../scene/schema"
import { type Slot, slotsOf } from "../scene/slots"
import { useLive } from "../state/useBench"

const byKey = new WeakMap<Scene, ReadonlyMap<string, Slot>>()

/** A scene's slot by key, found at once: a sheet of fields asks for dozens each frame. */
export function slotIn(scene: Scene, key: string): Slot | undefined {
  let slots = byKey.get(scene)
  if (slots === undefined) {
    slots = new Map(slotsOf(scene).map((slot) => [slot.key, slot]))
    byKey.set(scene, slots)
  }
  return slots.get(key)
}

/** "Front rod, length": one number by the names of the page. */
export const slotWords = (scene: Scene, slot: Slot): string => `${partTitle(scene, slot.owner)}, ${slot.label}`

export interface LiveSlot {
  readonly value: number
  readonly absent: boolean
  readonly field: NumberField
  readonly label: string
  readonly title: string
}

/** One editable number, live; null once the scene has no such number. Renders only when something of it changes. */
export function useSlot(key: string): LiveSlot | null {
  const value = useLive(({ scene }) => slotIn(scene, key)?.value)
  const absent = useLive(({ scene }) => slotIn(scene, key)?.absent ?? true)
  const field = useLive(({ scene }) => slotIn(scene, key)?.field)
  const label = useLive(({ scene }) => slotIn(scene, key)?.label ?? "")
  const title = useLive(({ scene }) => {
    const slot = slotIn(scene, key)
    return slot === undefined ? "" : slotWords(scene, slot)
  })
  return value === undefined || field === undefined ? null : { value, absent, field, label, title }
}
