import { cross, type Vec3, ZERO } from "../solids"
import type { Joint } from "../swing"

/**
 * Turn rate (rad per unit, bow axes) of a swing weight at rest while gravity's unit direction in bow axes changes
 * at `gravityRate`: the derivative of `swingRest`, for a changing pose.
 *
 * Off its stops the weight follows gravity. On its stop a hinge stays; a ball goes round its stop's cone. Just at
 * the stop it is the derivative in the direction of the change that counts: held when gravity leaves, free when it
 * comes back. Where `swingRest` decides by rule (gravity square to a hinge's plane, or straight up over a ball's
 * stop) the direction jumps, and the rate is zero by decision.
 */
export function restTurn(gravity: Vec3, gravityRate: Vec3, joint: Joint, stop: number): Vec3 {
  return joint === "hinge" ? hingeTurn(gravity, gravityRate, stop) : ballTurn(gravity, gravityRate, stop)
}

function hingeTurn(gravity: Vec3, rate: Vec3, stop: number): Vec3 {
  const inPlane = gravity[0] * gravity[0] + gravity[1] * gravity[1]
  if (inPlane === 0) return ZERO
  const wanted = Math.atan2(gravity[0], 0 - gravity[1])
  const wantedRate = (gravity[0] * rate[1] - gravity[1] * rate[0]) / inPlane
  const outward = wanted === 0 ? Math.abs(wantedRate) : wantedRate * Math.sign(wanted)
  if (isHeld(Math.abs(wanted), outward, stop)) return ZERO
  return [0, 0, wantedRate]
}

function ballTurn(gravity: Vec3, rate: Vec3, stop: number): Vec3 {
  const across = gravity[0] * gravity[0] + gravity[2] * gravity[2]
  const wanted = Math.atan2(Math.sqrt(across), 0 - gravity[1])
  const outward = across === 0 ? Math.hypot(rate[0], rate[2]) : rate[1]
  if (!isHeld(wanted, outward, stop)) return cross(gravity, rate)
  if (across === 0) return ZERO
  return [0, (gravity[2] * rate[0] - gravity[0] * rate[2]) / across, 0]
}

const isHeld = (wanted: number, outward: number, stop: number): boolean =>
  wanted > stop || (wanted === stop && outward > 0)

/**
 * Turn rate (rad per rad of stop angle, bow axes) of a swing weight at rest under `gravity` (unit, bow axes). It
 * turns with its stop only while it leans on it, about the level line across the side it leans to; just at the stop
 * a wider one no longer carries it, so the rate is zero. A ball upside down leans forward, as in `swingRest`.
 */
export function stopTurn(gravity: Vec3, joint: Joint, stop: number): Vec3 {
  if (joint === "hinge") {
    if (gravity[0] === 0 && gravity[1] === 0) return ZERO
    const wanted = Math.atan2(gravity[0], 0 - gravity[1])
    return Math.abs(wanted) > stop ? [0, 0, Math.sign(wanted)] : ZERO
  }
  const across = Math.hypot(gravity[0], gravity[2])
  if (Math.atan2(across, 0 - gravity[1]) <= stop) return ZERO
  return across > 0 ? [(0 - gravity[2]) / across, 0, gravity[0] / across] : [0, 0, 1]
}
