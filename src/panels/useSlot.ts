import { slotTitle } from "../describe/partNames"
import type { NumberField } from "../scene/fields"
import { slotNamed } from "../scene/slots"
import { useLive } from "../state/useBench"

export interface LiveSlot {
  readonly value: number
  readonly absent: boolean
  readonly field: NumberField
  readonly label: string
  readonly title: string
}

/** One editable number, live; null once the scene has no such number. Renders only when something of it changes. */
export function useSlot(key: string): LiveSlot | null {
  const value = useLive(({ scene }) => slotNamed(scene, key)?.value)
  const absent = useLive(({ scene }) => slotNamed(scene, key)?.absent ?? true)
  const field = useLive(({ scene }) => slotNamed(scene, key)?.field)
  const label = useLive(({ scene }) => slotNamed(scene, key)?.label ?? "")
  const title = useLive(({ scene }) => {
    const slot = slotNamed(scene, key)
    return slot === undefined ? "" : slotTitle(scene, slot)
  })
  return value === undefined || field === undefined ? null : { value, absent, field, label, title }
}
