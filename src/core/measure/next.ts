import { centreRate, sumMoments } from "../sensitivity"
import { scale } from "../solids"
import { bodyMoments, bodyRates, plausible } from "./body"
import type { Fit } from "./fit"
import type { Observation } from "./observation"
import { NINETY_FIVE } from "./settings"
import { type Decompose, readings, systemOf } from "./system"

/**
 * How far, at 95 %, the balance point of the whole bow would be known after one more observation, m: the root of the
 * summed squares of forward, up and side. What is not determined counts with its plausible span, so that an
 * observation is also worth what it newly determines. Null stands for no further one.
 */
export function expectedSpread(
  seen: readonly Observation[],
  fit: Pick<Fit, "body">,
  next: Observation | null,
  rest: Observation["rest"],
  decompose: Decompose,
): number {
  const all = next === null ? seen : [...seen, next]
  const { jacobian } = systemOf(readings(all, fit.body))
  const assumed = plausible.map((_, i) => plausible.map((_, k) => (i === k ? NINETY_FIVE : 0)))
  // A reading that no such bow could give says nothing of what another one would.
  const { values, right } = decompose([...jacobian.filter((row) => row.every(Number.isFinite)), ...assumed])
  const whole = sumMoments(bodyMoments(fit.body), rest)
  const centre = scale(whole.first, 1 / whole.mass)
  const rates = bodyRates(fit.body).map((rate) => centreRate({ mass: whole.mass, centre }, rate))
  let variance = 0
  for (const axis of [0, 1, 2] as const) {
    values.forEach((value, k) => {
      const through = rates.reduce((sum, rate, i) => sum + rate[axis] * plausible[i]! * right[i]![k]!, 0)
      variance += (through / value) ** 2
    })
  }
  return NINETY_FIVE * Math.sqrt(variance)
}
