import { RADIAN_PER_DEGREE as DEGREE } from "../../constants"
import { cross, dot, scale, subtract, unit, type Vec3 } from "../../solids"
import { type Attitude, hangingAttitude } from "../attitude"

/**
 * Which way is down in a phone's own axes (right, top, out of the screen), from the angles of its orientation sensor,
 * degrees: W3C Device Orientation's R = Rz(alpha)·Rx(beta)·Ry(gamma), whose last row is up. Alpha, the compass, does not
 * matter.
 */
export function downInPhone(betaDeg: number, gammaDeg: number): Vec3 {
  const [beta, gamma] = [betaDeg * DEGREE, gammaDeg * DEGREE]
  return [Math.cos(beta) * Math.sin(gamma), 0 - Math.sin(beta), 0 - Math.cos(beta) * Math.cos(gamma)]
}

/** Which way the screen looks when the phone lies flat against the bow's side. */
export type ScreenSide = "right" | "left"

/** The bow's axes in those of the phone that is fixed to it. */
export interface Zero {
  readonly forward: Vec3
  readonly up: Vec3
  readonly right: Vec3
}

/**
 * The zeroing: the bow is held level and upright with the phone flat on its side, and `down` is what the phone then
 * says. Null with the screen up or down, from which forward cannot be told: the phone is not flat on the bow's side.
 */
export function zeroAt(down: Vec3, side: ScreenSide): Zero | null {
  const out: Vec3 = [0, 0, side === "right" ? 1 : -1]
  const level = subtract(out, scale(down, dot(out, down)))
  if (dot(level, level) < Math.sin(FLAT_ENOUGH) ** 2) return null
  const up = scale(unit(down), -1)
  const right = unit(level)
  return { forward: cross(up, right), up, right }
}

/** The screen has to be this far from facing straight up or down, rad. */
const FLAT_ENOUGH = 45 * DEGREE

/** Slope and cant of the bow, from what the phone fixed to it says is down. */
export function tiltFrom(zero: Zero, down: Vec3): Attitude {
  const inBow: Vec3 = [dot(zero.forward, down), dot(zero.up, down), dot(zero.right, down)]
  return hangingAttitude([0, 0, 0], inBow) ?? { slope: 0, cant: 0 }
}
