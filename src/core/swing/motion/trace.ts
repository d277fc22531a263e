import { driveAt } from "./drive"
import { type Held, heldBy } from "./held"
import type { Manoeuvre } from "./manoeuvre"
import type { MotionModel } from "./model"
import { jointAcceleration, movingMoment, weightMoment } from "./reaction"
import { plumbAngle, startMotion } from "./state"
import { stepMotion } from "./step"

/** A swing weight's motion at evenly spaced times; all arrays have one entry a sample. Moments are nose-down, N·m. */
export interface MotionTrace {
  /** s, from 0. */
  readonly time: Float64Array
  /** rad, positive front up. */
  readonly slope: Float64Array
  /** Stem from plumb in its plane, rad, positive forward. */
  readonly fromPlumb: Float64Array
  /** Stem from the plane's downward direction, which turns with the bow, rad, positive forward. */
  readonly inBow: Float64Array
  /** What the free weight brings on the grip, with all it takes to move it. */
  readonly moment: Float64Array
  /** What gravity alone does with the free weight where it is. */
  readonly weightMoment: Float64Array
  /** The same two for the weight locked in its joint at its first angle. */
  readonly lockedMoment: Float64Array
  readonly lockedWeightMoment: Float64Array
  /** 0 free, 1 held by friction, 2 held by its stop. */
  readonly held: Uint8Array
}

const HELD: Readonly<Record<Held, number>> = { free: 0, friction: 1, stop: 2 }

/** More samples than any plot shows; a slip of units must not fill the memory. */
const MOST_SAMPLES = 1_000_000

/**
 * Follows a weight through a manoeuvre for `duration`, s, with a sample each `every`, s, beginning at rest in its joint
 * at `firstAngle`, rad, or where it hangs.
 * @throws RangeError unless duration is finite and not negative, `every` is positive, and the samples are a million at most.
 */
export function traceMotion(
  model: MotionModel,
  manoeuvre: Manoeuvre,
  duration: number,
  every: number,
  firstAngle?: number,
): MotionTrace {
  const count = Math.floor(duration / every + 1e-9) + 1
  if (!(duration >= 0 && every > 0 && count <= MOST_SAMPLES)) {
    throw new RangeError("a trace needs a duration, a positive spacing and no more than a million samples")
  }
  const samples = () => new Float64Array(count)
  const trace: MotionTrace = {
    time: samples(),
    slope: samples(),
    fromPlumb: samples(),
    inBow: samples(),
    moment: samples(),
    weightMoment: samples(),
    lockedMoment: samples(),
    lockedWeightMoment: samples(),
    held: new Uint8Array(count),
  }
  const state = startMotion(model, manoeuvre, firstAngle)
  const locked = state.angle
  const drive = state.room.start
  for (let index = 0; index < count; index++) {
    // Times are products, not sums, so that the last sample does not drift.
    if (index > 0) stepMotion(model, manoeuvre, state, index * every - state.time)
    driveAt(model, manoeuvre, state.time, drive)
    const { slope } = drive.now
    const acceleration = jointAcceleration(model, state, drive)
    trace.time[index] = state.time
    trace.slope[index] = slope
    trace.inBow[index] = state.angle
    trace.fromPlumb[index] = state.angle - plumbAngle(model, slope)
    trace.moment[index] = movingMoment(model, state.angle, state.rate, acceleration, drive)
    trace.weightMoment[index] = weightMoment(model, state.angle, slope)
    trace.lockedMoment[index] = movingMoment(model, locked, 0, 0, drive)
    trace.lockedWeightMoment[index] = weightMoment(model, locked, slope)
    trace.held[index] = HELD[heldBy(model, state.angle, state.rate, drive)]
  }
  return trace
}
