import { ROUND, type Rounding } from "../core/rounding"
import type { SceneError } from "./errors"
import type { Quantity } from "./fields"
import { fileUnit } from "./units"

/** A number in a sentence, in the file's unit; whoever says the sentence picks the unit it is said in. */
export interface Amount {
  readonly value: number
  readonly quantity: Quantity
  /** Said without its unit, where that is plain or follows later. */
  readonly bare?: boolean
  /** For numbers that a solver found: how to cut them to the decimals shown, so that a number said to work does. */
  readonly round?: Rounding
}

/** A sentence in its parts. */
export type Words = readonly (string | Amount)[]

export const amount = (value: number, quantity: Quantity): Amount => ({ value, quantity })
export const bare = (value: number, quantity: Quantity): Amount => ({ value, quantity, bare: true })

/** The sentence as the report says it: in the units of the file, solved numbers in whole ones. */
export const inFileUnits = (words: Words): string =>
  words.map((word) => (typeof word === "string" ? word : amountInFile(word))).join("")

/** An error whose message has numbers that the page says in its own units. */
export const explained = (code: SceneError["code"], path: string, words: Words): SceneError => ({
  code,
  path,
  message: inFileUnits(words),
  words,
})

function amountInFile({ value, quantity, bare, round }: Amount): string {
  const number = String(round === undefined ? value : ROUND[round](value))
  const unit = bare ? "" : fileUnit[quantity]
  return unit === "" ? number : `${number} ${unit}`
}
