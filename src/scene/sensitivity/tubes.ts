import {
  type MassMoments,
  momentsOf,
  movedRates,
  scaleMoments,
  sumMoments,
  tubeLengthRates,
  tubeRadiusRates,
} from "../../core/sensitivity"
import { scale, tube } from "../../core/solids"
import { type Axis, GRAM, MM } from "../assemble"
import type { elementFields } from "../fields"
import type { PartOf } from "../schema"
import { perGram, perMm, WEIGHS_NOTHING } from "./rates"

/** How the own mass of a chain's coaxial piece answers to its dimensions. SI: per kg and per m. */
export interface TubeRates {
  readonly mass: MassMoments
  /** Its inner end stays, its centre moves out by half. */
  readonly length: MassMoments
  readonly outerRadius: MassMoments
  readonly innerRadius: MassMoments
}

/** Rates of a piece of `mass` (kg) on its `axis`; a piece of no mass still has its rate per kilogram. */
export function tubeRates(mass: number, axis: Axis): TubeRates {
  const { start, direction, length, outerRadius, innerRadius } = axis
  const unit = momentsOf(tube(1, start, direction, length, outerRadius, innerRadius))
  return {
    mass: unit,
    length: sumMoments(
      movedRates(scaleMoments(unit, mass), scale(direction, 1 / 2)),
      tubeLengthRates(mass, length, direction),
    ),
    outerRadius: tubeRadiusRates(mass, outerRadius, direction),
    innerRadius: tubeRadiusRates(mass, innerRadius, direction),
  }
}

/** One rate for every number of an element's kind; the compiler asks for one when a field is added. */
export type ElementRates<K extends keyof typeof elementFields> = Record<keyof (typeof elementFields)[K], MassMoments>

/**
 * Rates of a rod, extender or damper in file units; `lengthening` is that of a metre of its length with all
 * outward of it moved along.
 */
export const rodRates = (own: TubeRates, lengthening: MassMoments): ElementRates<"extender"> => ({
  massG: perGram(own.mass),
  lengthMm: perMm(lengthening),
  outerMm: scaleMoments(own.outerRadius, MM / 2),
  innerMm: scaleMoments(own.innerRadius, MM / 2),
  modulusGPa: WEIGHS_NOTHING,
})

/** Rates of a stack of discs in file units, the count taken as continuous. */
export const weightsRates = (
  { count, eachG, thicknessMm }: PartOf<"weights">,
  own: TubeRates,
  lengthening: MassMoments,
): ElementRates<"weights"> => ({
  count: sumMoments(scaleMoments(own.mass, eachG * GRAM), scaleMoments(lengthening, thicknessMm * MM)),
  eachG: scaleMoments(own.mass, count * GRAM),
  thicknessMm: scaleMoments(lengthening, count * MM),
  outerMm: scaleMoments(own.outerRadius, MM / 2),
})
