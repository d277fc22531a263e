import { GRAVITY } from "../constants"
import { dot, type Mat3, type Vec3 } from "../solids"

/** What gravity does about the grip with the bow held as `rotation` says. */
export interface GravityMoments {
  /** Horizontal distance from the grip to the plumb line through the centre of mass, m, positive to the target. */
  readonly armForward: number
  /** The same to the archer's right, m. */
  readonly armSide: number
  /** N·m, positive lowers the front. */
  readonly noseDown: number
  /** N·m, positive turns the top to the right. */
  readonly cantRight: number
}

/** Arms and moments of `mass` (kg) at `centre` (m, bow axes) about the grip: m·g·(R·r).x and m·g·(R·r).z. */
export function gravityMoments(mass: number, centre: Vec3, rotation: Mat3): GravityMoments {
  const armForward = dot(rotation[0], centre)
  const armSide = dot(rotation[2], centre)
  const weight = mass * GRAVITY
  return { armForward, armSide, noseDown: weight * armForward, cantRight: weight * armSide }
}
