import { quoted } from "./errors"
import type { NumberField } from "./fields"
import { rangeText } from "./units"

/** Why `given` does not do for this field, with the allowed range. */
export function rangeMessage(field: NumberField, given: unknown): string {
  const allowed = `${field.whole ? "a whole number" : "a number"} in ${rangeText(field.min, field.max, field.quantity)}`
  return given === undefined ? `is missing; ${allowed} is needed` : `${quoted(given)} given; ${allowed} is needed`
}

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
