import { quoted } from "./errors"
import type { NumberField } from "./fields"
import { amount, bare, inFileUnits, type Words } from "./words"

/** Why `given` does not do for this field, with the allowed range. */
export const rangeMessage = (field: NumberField, given: unknown): string => inFileUnits(rangeWords(field, given))

/** The same in parts. */
export function rangeWords(field: NumberField, given: unknown): Words {
  const { quantity, whole } = field
  const number = typeof given === "number" ? bare(given, quantity) : quoted(given)
  const start = given === undefined ? ["is missing"] : [number, " given"]
  return [...start, `; ${whole ? "a whole number" : "a number"} in `, ...rangeAmounts(field), " is needed"]
}

/** "1 … 2000 mm": the range of a field. */
export const rangeAmounts = ({ min, max, quantity }: NumberField): Words => [
  bare(min, quantity),
  " … ",
  amount(max, quantity),
]

/** Why an object whose `key` selects its kind cannot be read. */
export const choiceMessage =
  (key: string, choices: readonly string[]) =>
  (issue: { input?: unknown }): string => {
    const { input } = issue
    const allowed = choices.join(", ")
    if (input === undefined) return `is missing; an object with "${key}" (${allowed}) is needed`
    if (input === null || typeof input !== "object" || Array.isArray(input)) {
      return `${quoted(input)} given; an object with "${key}" (${allowed}) is needed`
    }
    const given = (input as Record<string, unknown>)[key]
    return given === undefined
      ? `"${key}" is missing; one of ${allowed} is needed`
      : `"${key}" is ${quoted(given)}; one of ${allowed} is needed`
  }
