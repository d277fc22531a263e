import { ROUND, type Rounding } from "../core/rounding"
import type { SceneError } from "../scene/errors"
import type { Amount } from "../scene/words"
import { fieldNumber, fieldSaid, fieldUnit } from "./fieldText"
import type { UnitChoice } from "./format"

/** What is wrong, without its place: in the chosen units where the error knows its numbers, else in the file's. */
export const errorText = ({ message, words }: Pick<SceneError, "message" | "words">, units: UnitChoice): string =>
  words?.map((word) => (typeof word === "string" ? word : amountText(word, units))).join("") ?? message

function amountText({ value, quantity, bare, round }: Amount, units: UnitChoice): string {
  const shown = round === undefined ? value : rounded(value, quantity, round, units)
  if (bare) return fieldNumber(shown, quantity, units)
  return fieldSaid(shown, quantity, units)
}

/** In the file's unit a solved number is said whole, in others to the decimals that they are shown with. */
function rounded(value: number, quantity: Amount["quantity"], round: Rounding, units: UnitChoice): number {
  const { factor, decimals } = fieldUnit(quantity, units)
  const step = factor === 1 ? 1 : 10 ** -decimals / factor
  return ROUND[round](value / step) * step
}
