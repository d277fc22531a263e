import { sceneFaults as faults } from "../words/sceneFaults"
import { quoted } from "./errors"
import type { NumberField } from "./fields"
import { type Amount, amount, bare, inFileUnits, type Words } from "./words"

/** Why `given` does not do for this field, with the allowed range. */
export const rangeMessage = (field: NumberField, given: unknown): string => inFileUnits(rangeWords(field, given))

/** The same in parts. */
export function rangeWords(field: NumberField, given: unknown): Words {
  const [from, to] = rangeAmounts(field)
  if (given === undefined) return (field.whole ? faults.noWhole : faults.noNumber)(from, to)
  const number = typeof given === "number" ? bare(given, field.quantity) : quoted(given)
  return (field.whole ? faults.whole : faults.number)<Amount | string>(number, from, to)
}

/** Both ends of a field's range, the unit behind the second: "1 … 2000 mm". */
export const rangeAmounts = ({ min, max, quantity }: NumberField): [Amount, Amount] => [
  bare(min, quantity),
  amount(max, quantity),
]
