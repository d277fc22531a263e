import { addTensors, add, cross, scale, type Tensor, turnRate, type Vec3 } from "../solids"
import type { MassMoments } from "./massMoments"

/**
 * Rates of a body's mass moments while all of it moves with `velocity` (m per unit, bow axes). With S its first
 * moment, the parallel-axis term changes by 2(S·v)1 - S vᵀ - v Sᵀ; nothing else of the body matters.
 */
export const movedRates = (body: MassMoments, velocity: Vec3): MassMoments => ({
  mass: 0,
  first: scale(velocity, body.mass),
  aboutOrigin: shiftRate(body.first, velocity),
})

function shiftRate([sx, sy, sz]: Vec3, [vx, vy, vz]: Vec3): Tensor {
  return {
    xx: 2 * (sy * vy + sz * vz),
    yy: 2 * (sx * vx + sz * vz),
    zz: 2 * (sx * vx + sy * vy),
    xy: 0 - sx * vy - sy * vx,
    xz: 0 - sx * vz - sz * vx,
    yz: 0 - sy * vz - sz * vy,
  }
}

/**
 * Rates of a body's mass moments while it turns rigidly at `turn` (rad per unit, bow axes) about the point
 * `pivot` (m from the grip): a turn about the grip, and a move that keeps the pivot where it is.
 */
export function turnedRates(body: MassMoments, turn: Vec3, pivot: Vec3): MassMoments {
  const moved = movedRates(body, cross(pivot, turn))
  return {
    mass: 0,
    first: add(cross(turn, body.first), moved.first),
    aboutOrigin: addTensors(turnRate(body.aboutOrigin, turn), moved.aboutOrigin),
  }
}
