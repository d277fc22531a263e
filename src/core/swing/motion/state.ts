import { gravityInBow, poseRotation } from "../../balance"
import { swingRest } from "../rest"
import { newStepFactors, type StepFactors } from "./damped"
import { type Drive, newDrive } from "./drive"
import type { Manoeuvre } from "./manoeuvre"
import type { MotionModel } from "./model"

/** Where a swing weight is and how it moves; changed in place by `stepMotion`. */
export interface MotionState {
  /** s. */
  time: number
  /** From the plane's downward direction, which turns with the bow, rad, positive forward. */
  angle: number
  /** Of that angle, rad/s: how fast the joint turns. */
  rate: number
  /** Room for the integrator, so that a step allocates nothing. */
  readonly room: Room
}

export interface Room {
  /** The drive at the start and the end of a step; they change places as time goes on. */
  start: Drive
  readonly middle: Drive
  end: Drive
  readonly factors: StepFactors
  /** Last trial step: angle and rate. */
  readonly trial: Float64Array
}

export const newRoom = (): Room => ({
  start: newDrive(),
  middle: newDrive(),
  end: newDrive(),
  factors: newStepFactors(),
  trial: new Float64Array(2),
})

/**
 * A weight at time 0 that does not turn in its joint: at `angle` (rad, in its plane, taken to the stop if it lies
 * beyond), or where it rests at the manoeuvre's first slope.
 */
export function startMotion(model: MotionModel, manoeuvre: Manoeuvre, angle?: number): MotionState {
  const room = newRoom()
  manoeuvre.at(0, room.start.now)
  const from = angle ?? restAngle(model, room.start.now.slope)
  return { time: 0, angle: Math.max(-model.stop, Math.min(model.stop, from)), rate: 0, room }
}

/** Where the weight rests in its plane on a bow held still at `slope`, rad, without friction. */
export function restAngle(model: MotionModel, slope: number): number {
  const gravity = gravityInBow(poseRotation(slope, Math.atan2(model.tilted, model.upright)))
  const { direction } = swingRest(gravity, "hinge", Math.min(model.stop, Math.PI))
  return Math.atan2(direction[0], 0 - direction[1])
}

/**
 * Angle in the plane of gravity's part in it, rad: from there `angle` is measured to get the angle from plumb. For an
 * upright plane it is -slope; square to gravity it is 0, by the same decision as for the rest.
 */
export function plumbAngle(model: MotionModel, slope: number): number {
  if (model.tilted === 0) return -slope
  return Math.atan2(-Math.sin(slope), model.upright * Math.cos(slope))
}
