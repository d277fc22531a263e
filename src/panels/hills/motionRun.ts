import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import {
  type Manoeuvre,
  type MotionModel,
  type MotionTrace,
  raise,
  raiseOn,
  traceMotion,
} from "../../core/swing/motion"

/** A weight followed through raising or lowering the bow, from its start until it has had time to settle. */
export interface MotionRun {
  readonly model: MotionModel
  readonly manoeuvre: Manoeuvre
  readonly trace: MotionTrace
}

/** Samples a second: one a frame. */
export const SAMPLES_A_SECOND = 60
/** How long the weight is watched after the bow has come to rest, s. */
const WATCHED_S = 5

export interface Aim {
  readonly toDeg: number
  readonly degreesASecond: number
}

/** From rest at a slope, the weight at `firstAngle` (rad in the bow's frame) or where it hangs. */
export function beginRun(model: MotionModel, fromDeg: number, aim: Aim, firstAngle?: number): MotionRun {
  return follow(model, raise(fromDeg * DEGREE, aim.toDeg * DEGREE, aim.degreesASecond * DEGREE), firstAngle)
}

/** A new aim taken `time` s into a run: what was up to then stays as it was. */
export function turnRun(run: MotionRun, time: number, { toDeg, degreesASecond }: Aim): MotionRun {
  const manoeuvre = raiseOn(run.manoeuvre, time, toDeg * DEGREE, degreesASecond * DEGREE)
  return follow(run.model, manoeuvre, run.trace.inBow[0])
}

function follow(model: MotionModel, manoeuvre: Manoeuvre, firstAngle?: number): MotionRun {
  const trace = traceMotion(model, manoeuvre, manoeuvre.end + WATCHED_S, 1 / SAMPLES_A_SECOND, firstAngle)
  return { model, manoeuvre, trace }
}
