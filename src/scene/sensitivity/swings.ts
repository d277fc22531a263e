import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import {
  type MassMoments,
  momentsOf,
  movedRates,
  restTurn,
  scaleMoments,
  slenderRates,
  stopTurn,
  sumMoments,
  tubeLengthRates,
  tubeRadiusRates,
  turnedRates,
} from "../../core/sensitivity"
import { type Vec3, ZERO } from "../../core/solids"
import { type SwingWeight, swingSolids } from "../../core/swing"
import { type HungSwing, MM } from "../assemble"
import type { PoseBalance } from "../evaluate"
import type { elementFields } from "../fields"
import { perDegree, perGram, perMm, WEIGHS_NOTHING } from "./rates"

export const swingBody = ({ weight, hinge, rest }: HungSwing): MassMoments =>
  sumMoments(...swingSolids(weight, hinge, rest.direction).map(momentsOf))

/** Rates of a swing weight by its own fields, in file units, where it rests under `gravity` (unit, bow axes). */
export function swingRates(
  swing: HungSwing,
  gravity: Vec3,
): Record<keyof (typeof elementFields)["swing"], MassMoments> {
  const { weight, hinge, rest } = swing
  const d = rest.direction
  const [stem, bob] = swingSolids(weight, hinge, d).map(momentsOf) as [MassMoments, MassMoments]
  const [stemUnit, bobUnit] = unitBodies(weight, hinge, d)
  const end: Vec3 = [
    hinge[0] + d[0] * weight.stemLength,
    hinge[1] + d[1] * weight.stemLength,
    hinge[2] + d[2] * weight.stemLength,
  ]
  const stemGrowth = slenderRates(stem.mass, 0, { at: hinge, rate: ZERO }, { at: end, rate: d })
  const opening = stopTurn(gravity, weight.joint, weight.stop)
  return {
    stemLengthMm: perMm(sumMoments(stemGrowth, movedRates(bob, d))),
    stemMassG: perGram(stemUnit),
    bobMassG: perGram(bobUnit),
    bobOuterMm: scaleMoments(tubeRadiusRates(bob.mass, weight.bobRadius, d), MM / 2),
    // The bob is centred on the stem's end: a longer one grows both ways.
    bobLengthMm: perMm(tubeLengthRates(bob.mass, weight.bobLength, d)),
    stopDeg: perDegree(turnedRates(swingBody(swing), opening, hinge)),
    frictionNmm: WEIGHS_NOTHING,
    damping: WEIGHS_NOTHING,
  }
}

function unitBodies(weight: SwingWeight, hinge: Vec3, d: Vec3): [MassMoments, MassMoments] {
  return swingSolids({ ...weight, stemMass: 1, bobMass: 1 }, hinge, d).map(momentsOf) as [MassMoments, MassMoments]
}

/** Rates, per degree, of all swing weights while gravity turns in the bow's frame at `gravityRate` (per rad). */
export function swingingRates(balance: PoseBalance, gravityRate: Vec3): MassMoments {
  const rates = balance.parts.flatMap(({ hung }) => {
    if (hung === undefined) return []
    const turn = restTurn(balance.gravity, gravityRate, hung.weight.joint, hung.weight.stop)
    return [turnedRates(swingBody(hung), turn, hung.hinge)]
  })
  return scaleMoments(sumMoments(...rates), DEGREE)
}
