import { type Drive, pullAt } from "./drive"
import type { MotionModel } from "./model"
import type { MotionState } from "./state"

/** What keeps a weight from turning in its joint. */
export type Held = "free" | "friction" | "stop"

/**
 * Whether a weight that does not turn in its joint stays so under `drive`. Dry friction holds while the torque on the
 * joint is no larger than it; a stop takes any torque that presses on it and none that pulls away. A stop at 0 on both
 * sides locks the weight. Where both could hold, the stop is named only if friction alone would not do.
 */
export function heldBy(model: MotionModel, angle: number, rate: number, drive: Drive): Held {
  if (!(model.aboutJoint > 0)) return "friction"
  if (rate !== 0) return "free"
  const torque = model.aboutJoint * pullAt(drive, angle)
  if (model.friction > 0 && Math.abs(torque) <= model.friction) return "friction"
  if (angle >= model.stop && torque >= -model.friction) return "stop"
  if (angle <= -model.stop && torque <= model.friction) return "stop"
  return "free"
}

/** The way friction must be overcome: with the turning, or from rest with the torque. 0 without friction. */
export function turningWay(model: MotionModel, state: MotionState, drive: Drive): number {
  if (model.friction === 0) return 0
  return state.rate !== 0 ? Math.sign(state.rate) : Math.sign(pullAt(drive, state.angle))
}
