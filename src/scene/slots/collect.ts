import { fieldNames } from "../../words/fieldNames"
import type { PathStep } from "../errors"
import type { NumberField } from "../fields"
import type { Slot } from "./slot"

/** The slots of one part of the document. */
export interface SlotGroup {
  readonly slots: readonly Slot[]
  named(key: string): Slot | undefined
}

const groups = new WeakMap<object, Map<string, SlotGroup>>()

/**
 * The slots that `fill` gathers of `holder`, gathered once: documents share whatever did not change between them, so
 * setting one number makes only its own holders' slots anew. `id` must name everything else that `fill` depends on, as
 * the same object may stand at two places.
 */
export function slotGroup(holder: object, id: string, fill: (into: Collector) => void): SlotGroup {
  const known = groups.get(holder)
  const found = known?.get(id)
  if (found !== undefined) return found
  const into = new Collector()
  fill(into)
  const group = grouped(into.slots)
  if (known === undefined) groups.set(holder, new Map([[id, group]]))
  else known.set(id, group)
  return group
}

function grouped(slots: readonly Slot[]): SlotGroup {
  let byKey: Map<string, Slot> | null = null
  return {
    slots,
    named(key) {
      byKey ??= new Map(slots.map((slot) => [slot.key, slot]))
      return byKey.get(key)
    },
  }
}

/** Gathers the slots of one owner. */
export class Collector {
  readonly slots: Slot[] = []

  add(group: SlotGroup) {
    this.slots.push(...group.slots)
  }

  number(
    owner: string,
    name: string,
    address: readonly PathStep[],
    field: NumberField,
    value: number | undefined,
    label = field.label,
  ) {
    this.slots.push({
      key: `${owner}:${name}`,
      owner,
      address,
      field,
      label,
      value: value ?? field.fallback ?? field.min,
      absent: value === undefined,
    })
  }

  /** Every number of `values` that `fields` knows, under its own name. */
  all(owner: string, address: readonly PathStep[], fields: Readonly<Record<string, NumberField>>, values: object) {
    for (const [name, field] of Object.entries(fields)) {
      const value = (values as Readonly<Record<string, number | undefined>>)[name]
      this.number(owner, name, [...address, name], field, value)
    }
  }

  /** A list of numbers, one name an entry: `centreMm.forward`, `centreMm.up`, … */
  list(
    owner: string,
    name: string,
    address: readonly PathStep[],
    field: NumberField,
    values: readonly number[],
    entries: readonly (keyof typeof fieldNames.entries)[],
  ) {
    entries.forEach((entry, index) => {
      this.number(
        owner,
        `${name}.${entry}`,
        [...address, name, index],
        field,
        values[index],
        `${field.label}, ${fieldNames.entries[entry]}`,
      )
    })
  }
}
