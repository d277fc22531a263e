import { NEWTON_PER_LBF, RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import {
  centreRate,
  drawnBalanceRates,
  gravityMomentRates,
  type HoldRates,
  type MassMoments,
  NO_HOLD_RATES,
  NO_POSE_RATES,
} from "../../core/sensitivity"
import type { Mat3 } from "../../core/solids"
import { MM } from "../assemble"
import { compoundHoldForce } from "../compoundDraw"
import type { Evaluation } from "../evaluate"
import { grams, millimetres } from "../figures"
import type { Scene } from "../schema"
import type { Sensitivity } from "./sensitivity"

/** What one unit of a slot does: to the masses at the pose and at full draw, to the pose, to the line of pull. */
export interface SlotRates {
  readonly now: MassMoments
  readonly drawn: MassMoments
  /** Of the bow-to-world rotation; left out where the pose stays. */
  readonly rotation?: Mat3
  /** Left out where the line of pull stays. */
  readonly hold?: Partial<HoldRates>
}

/** The rates of the report's figures that follow from a slot's, in the figures' units. */
export function figureRates({ scene, now, fullDraw }: Evaluation, rates: SlotRates): Sensitivity {
  const still = NO_POSE_RATES.rotation
  const moments = gravityMomentRates(now, rates.now, now.rotation, rates.rotation ?? still)
  const { noseDown } = gravityMomentRates(fullDraw, rates.drawn, fullDraw.rotation, still)
  const hold = {
    holdForce: fullDraw.limbs.holdForce,
    nockHeight: scene.bow.nockHeightMm * MM,
    drawLength: scene.bow.drawLengthMm * MM,
    elbowElevation: scene.archer.elbowElevationDeg * DEGREE,
    mass: fullDraw.mass,
    noseDown: fullDraw.noseDown,
  }
  const drawn = drawnBalanceRates(hold, { ...NO_HOLD_RATES, ...rates.hold, mass: rates.drawn.mass, noseDown })
  const { xx, yy, zz } = rates.now.aboutOrigin
  return {
    massG: grams(rates.now.mass),
    centreMm: millimetres(centreRate(now, rates.now)),
    noseDownNm: moments.noseDown,
    cantRightNm: moments.cantRight,
    inertiaGrip: { pitch: zz, roll: xx, yaw: yy },
    fullDraw: {
      netLiftNm: drawn.netLift,
      balancedForwardMm: drawn.balancedForward * 1e3,
      liftNm: drawn.lift,
    },
  }
}

/** What the line of pull depends on besides the masses, per file unit. The draw weight is met exactly at full draw. */
export function holdRates({ bow }: Scene): ReadonlyMap<string, Partial<HoldRates>> {
  const perPound = bow.kind === "compound" ? compoundHoldForce(bow) / bow.drawWeightLbf : NEWTON_PER_LBF
  return new Map([
    ["bow:drawWeightLbf", { holdForce: perPound }],
    ["bow:letOffPercent", { holdForce: (-bow.drawWeightLbf * NEWTON_PER_LBF) / 100 }],
    ["bow:nockHeightMm", { nockHeight: MM }],
    ["bow:drawLengthMm", { drawLength: MM }],
    ["archer:elbowElevationDeg", { elbowElevation: DEGREE }],
  ])
}
