import { plausible } from "./body"
import type { Fit } from "./fit"
import { NINETY_FIVE, NONE_OF_IT } from "./settings"

/**
 * How far, at 95 %, a number may be off that changes with the unknowns at the given rates, in that number's unit: its
 * rates through the covariance of the fit. Infinite where it hangs on what the readings do not determine.
 */
export function spreadOf(
  { directions, undetermined }: Pick<Fit, "directions" | "undetermined">,
  rates: readonly number[],
): number {
  const scaled = rates.map((rate, k) => rate * plausible[k]!)
  const through = (along: readonly number[]) => along.reduce((sum, part, k) => sum + part * scaled[k]!, 0)
  const whole = scaled.reduce((sum, part) => sum + part * part, 0)
  const open = undetermined.reduce((sum, along) => sum + through(along) ** 2, 0)
  if (open > NONE_OF_IT * whole) return Number.POSITIVE_INFINITY
  return (
    NINETY_FIVE *
    Math.sqrt(directions.reduce((sum, { along, deviation }) => sum + (through(along) * deviation) ** 2, 0))
  )
}

/** Covariance of the unknowns, in their order and units; nothing along what is not determined. */
export const covariance = ({ directions }: Pick<Fit, "directions">): number[][] =>
  plausible.map((a, i) =>
    plausible.map((b, j) =>
      directions.reduce((sum, { along, deviation }) => sum + a * along[i]! * b * along[j]! * deviation ** 2, 0),
    ),
  )
