import { spoken } from "./language"

/** A field with a number of the bow. `number` is "Front rod, length"; `allowed` "a number from 1 to 2000 mm". */
export const fields = spoken("fields", {
  /** Where an optional number is not given: in the field, and said. */
  none: "none",
  isNone: (number: string) => `${number}: none`,
  is: (number: string, value: string) => `${number} ${value}`,
  needed: (number: string, allowed: string) => `${number}: ${allowed} is needed.`,
  wrong: (number: string, reason: string) => `${number}: ${reason}.`,
  less: (number: string) => `One less, ${number}`,
  more: (number: string) => `One more, ${number}`,
  /** A field's tip; `allowed` with a capital. */
  tip: (allowed: string) => `${allowed}. Arrow keys step, with Shift further.`,
  /** For a screen reader. */
  inUnit: (unit: string, allowed: string) => `in ${unit}, ${allowed}`,
})
