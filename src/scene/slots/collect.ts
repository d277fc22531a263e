import type { PathStep } from "../errors"
import type { NumberField } from "../fields"
import type { Slot } from "./slot"

/** Gathers the slots of one owner. */
export class Collector {
  readonly slots: Slot[] = []

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
    entries: readonly string[],
  ) {
    entries.forEach((entry, index) => {
      this.number(
        owner,
        `${name}.${entry}`,
        [...address, name, index],
        field,
        values[index],
        `${field.label}, ${entry}`,
      )
    })
  }
}
