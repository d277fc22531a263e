import { NEWTON_PER_LBF } from "../core/constants"
import type { CompoundBow } from "./schema"

/** Where the schematic curve reaches its peak and where it leaves it, as draw fractions. */
const PEAK_FROM = 0.35
const PEAK_TO = 0.7

/** Force on the string of a compound at full draw, N: peak × (1 - let-off). */
export const compoundHoldForce = (bow: CompoundBow): number =>
  bow.drawWeightLbf * NEWTON_PER_LBF * (1 - bow.letOffPercent / 100)

/**
 * Draw force of a compound at draw fraction t, N. Cams are not modelled: only its ends (0 at brace, the holding
 * force at full draw) and its peak are the bow's; the smooth rise, plateau and fall between are a sketch of the
 * usual shape (common practice, no source) and are said to be one wherever they are shown.
 */
export function compoundForce(bow: CompoundBow, t: number): number {
  const peak = bow.drawWeightLbf * NEWTON_PER_LBF
  const hold = compoundHoldForce(bow)
  if (t <= 0) return 0
  if (t >= 1) return hold
  if (t < PEAK_FROM) return peak * smooth(t / PEAK_FROM)
  if (t <= PEAK_TO) return peak
  return peak + (hold - peak) * smooth((t - PEAK_TO) / (1 - PEAK_TO))
}

const smooth = (u: number): number => u * u * (3 - 2 * u)
