import type { DrawnBalance, DrawnHold } from "../balance"
import { GRAVITY } from "../constants"
import { dot, type Mat3, type MassProperties, scale, type Vec3 } from "../solids"
import type { MassMoments } from "./massMoments"

/** Rate of the centre of mass, m per unit, bow axes: (dS - c·dm)/m. A whole without mass has no centre: NaN. */
export function centreRate(
  { mass, centre }: Pick<MassProperties, "mass" | "centre">,
  { mass: dm, first }: MassMoments,
): Vec3 {
  const [x, y, z] = first
  return scale([x - centre[0] * dm, y - centre[1] * dm, z - centre[2] * dm], 1 / mass)
}

/**
 * Rates of gravity's moments about the grip, N·m per unit. They are g·(R·S).x and g·(R·S).z with S the first
 * moment, so both the masses and the pose `rotation` may change.
 */
export function gravityMomentRates(
  whole: MassProperties,
  rates: MassMoments,
  rotation: Mat3,
  rotationRate: Mat3,
): { readonly noseDown: number; readonly cantRight: number } {
  const first = scale(whole.centre, whole.mass)
  const rate = (row: 0 | 2) => GRAVITY * (dot(rotation[row], rates.first) + dot(rotationRate[row], first))
  return { noseDown: rate(0), cantRight: rate(2) }
}

/** How the things that make up a drawn balance change, each per unit of the same quantity. SI as in DrawnHold. */
export type HoldRates = Readonly<Record<keyof DrawnHold, number>>

export const NO_HOLD_RATES: HoldRates = {
  holdForce: 0,
  nockHeight: 0,
  drawLength: 0,
  elbowElevation: 0,
  mass: 0,
  noseDown: 0,
}

/**
 * Rates of `drawnBalance`: lift = F(h cos ε - L sin ε), net = lift - nose-down, balanced forward = lift/(m g).
 * N·m, N·m and m per unit.
 */
export function drawnBalanceRates(
  hold: DrawnHold,
  rates: HoldRates,
): Pick<DrawnBalance, "lift" | "netLift" | "balancedForward"> {
  const [cosine, sine] = [Math.cos(hold.elbowElevation), Math.sin(hold.elbowElevation)]
  const lever = hold.nockHeight * cosine - hold.drawLength * sine
  const leverRate =
    rates.nockHeight * cosine -
    rates.drawLength * sine -
    rates.elbowElevation * (hold.nockHeight * sine + hold.drawLength * cosine)
  const lift = rates.holdForce * lever + hold.holdForce * leverRate
  const weight = hold.mass * GRAVITY
  return {
    lift,
    netLift: lift - rates.noseDown,
    balancedForward: (lift - (hold.holdForce * lever * rates.mass) / hold.mass) / weight,
  }
}
