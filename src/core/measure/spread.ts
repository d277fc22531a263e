import { plausible } from "./body"
import { NINETY_FIVE, SOME_OF_IT } from "./settings"
import type { Direction } from "./system"

/** What of the unknowns the readings place, and what they do not: of Fit, all that a ± needs. */
export interface Determined {
  readonly directions: readonly Direction[]
  readonly undetermined: readonly (readonly number[])[]
}

/** How well a number is known: by the readings, only together with what is assumed, or not at all. */
export type Known = "yes" | "partly" | "no"

/**
 * How well a number is known that changes with the unknowns at the given rates, and how far it may be off at 95 %, in its
 * unit. What the readings leave open counts with its plausible span; where that is more than what they say, the number is
 * not known by them and may be off by any amount.
 */
export function standing(
  { directions, undetermined }: Determined,
  rates: readonly number[],
): { readonly known: Known; readonly spread: number } {
  const scaled = rates.map((rate, k) => rate * plausible[k]!)
  const through = (along: readonly number[]) => along.reduce((sum, part, k) => sum + part * scaled[k]!, 0)
  const open = Math.sqrt(undetermined.reduce((sum, along) => sum + through(along) ** 2, 0))
  const said =
    NINETY_FIVE *
    Math.sqrt(directions.reduce((sum, { along, deviation }) => sum + (through(along) * deviation) ** 2, 0))
  if (open <= said * (1 + ROUNDING)) return { known: "yes", spread: Math.hypot(open, said) }
  const touched = directions.reduce((sum, { along }) => sum + through(along) ** 2, 0)
  const known = touched > SOME_OF_IT * (touched + open * open) ? "partly" : "no"
  return { known, spread: Number.POSITIVE_INFINITY }
}

/** Of an orthonormal basis, float64. */
const ROUNDING = 1e-9

/** The ± alone; infinite where the number is not known. */
export const spreadOf = (fit: Determined, rates: readonly number[]): number => standing(fit, rates).spread

/** Covariance of the unknowns, in their order and units; nothing along what is not determined. */
export const covariance = ({ directions }: Pick<Determined, "directions">): number[][] =>
  plausible.map((a, i) =>
    plausible.map((b, j) =>
      directions.reduce((sum, { along, deviation }) => sum + a * along[i]! * b * along[j]! * deviation ** 2, 0),
    ),
  )
