/**
 * The factors of one step of length `step` for a rate that decays at `decay` per second by itself, in a table that is
 * refilled in place. See `advance.ts` for the method.
 */
export interface StepFactors {
  step: number
  decay: number
  /** What is left of the rate after half a step and after the whole. */
  halfLeft: number
  left: number
  /** Angle per rate, rate per acceleration and angle per acceleration over half a step. */
  halfReach: number
  halfPush: number
  /** Angle per rate over the whole step. */
  reach: number
  /** Weights of the accelerations at the start, at each middle stage and at the end: in the rate, then in the angle. */
  rateStart: number
  rateMiddle: number
  rateEnd: number
  angleStart: number
  angleMiddle: number
  angleEnd: number
}

export const newStepFactors = (): StepFactors => ({
  step: Number.NaN,
  decay: Number.NaN,
  halfLeft: 1,
  left: 1,
  halfReach: 0,
  halfPush: 0,
  reach: 0,
  rateStart: 0,
  rateMiddle: 0,
  rateEnd: 0,
  angleStart: 0,
  angleMiddle: 0,
  angleEnd: 0,
})

/** Sets `factors` for a step of length `step`, s, and `decay` = damping / moment of inertia, 1/s. */
export function fillStepFactors(factors: StepFactors, step: number, decay: number): void {
  if (factors.step === step && factors.decay === decay) return
  factors.step = step
  factors.decay = decay
  const half = step / 2
  const z = -decay * step
  factors.halfLeft = Math.exp(z / 2)
  factors.left = Math.exp(z)
  factors.halfReach = half * phi(1, z / 2)
  factors.halfPush = half * half * phi(2, z / 2)
  const one = phi(1, z)
  const two = phi(2, z)
  const three = phi(3, z)
  const four = phi(4, z)
  factors.reach = step * one
  factors.rateStart = step * (one - 3 * two + 4 * three)
  factors.rateMiddle = step * 2 * (two - 2 * three)
  factors.rateEnd = step * (4 * three - two)
  factors.angleStart = step * step * (two - 3 * three + 4 * four)
  factors.angleMiddle = step * step * 2 * (three - 2 * four)
  factors.angleEnd = step * step * (4 * four - three)
}

/** Up to this |z| the series is summed; beyond it the recurrence loses no more than three digits of sixteen. */
const SERIES_TO = 2
/** Terms that bring the series at |z| = 2 below float64 rounding. */
const TERMS = 30
const FACTORIALS = [1, 1, 2, 6, 24]

/**
 * φₖ(z) = Σ zʲ/(j + k)!, the functions of exponential integrators: φ₁ = (eᶻ - 1)/z, φₖ₊₁ = (φₖ - 1/k!)/z
 * (Hochbruck & Ostermann, "Exponential integrators", Acta Numerica 19, 2010; from memory). `order` 1 … 4.
 */
export function phi(order: number, z: number): number {
  if (Math.abs(z) <= SERIES_TO) {
    let term = 1 / FACTORIALS[order]!
    let sum = term
    for (let power = 1; power < TERMS; power++) {
      term *= z / (power + order)
      sum += term
    }
    return sum
  }
  let value = Math.exp(z)
  for (let k = 0; k < order; k++) value = (value - 1 / FACTORIALS[k]!) / z
  return value
}
