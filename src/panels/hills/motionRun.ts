import {
  type Manoeuvre,
  type MomentSum,
  type MotionModel,
  type MotionTrace,
  raise,
  raiseOn,
  sumMoments,
  traceMotion,
} from "../../core/swing/motion"

/** Weights followed through raising or lowering the bow, from its start until they have had time to settle. */
export interface MotionRun {
  /** At least one. */
  readonly models: readonly MotionModel[]
  readonly manoeuvre: Manoeuvre
  /** Where the bow is raised or lowered to, degrees. */
  readonly toDeg: number
  /** One a model, in the same order. */
  readonly traces: readonly MotionTrace[]
  /** What all of them bring together. */
  readonly sum: MomentSum
}

/** Samples a second: one a frame. */
export const SAMPLES_A_SECOND = 60
/** How long the weights are watched after the bow has come to rest, s. */
const WATCHED_S = 5

const DEGREE = Math.PI / 180

export interface Aim {
  readonly toDeg: number
  readonly degreesASecond: number
}

/** From rest at a slope, each weight at its `firstAngles` (rad in the bow's frame) or where it hangs. */
export function beginRun(
  models: readonly MotionModel[],
  fromDeg: number,
  aim: Aim,
  firstAngles?: readonly number[],
): MotionRun {
  const manoeuvre = raise(fromDeg * DEGREE, aim.toDeg * DEGREE, aim.degreesASecond * DEGREE)
  return follow(models, manoeuvre, aim.toDeg, firstAngles)
}

/** A new aim taken `time` s into a run: what was up to then stays as it was. */
export function turnRun(run: MotionRun, time: number, { toDeg, degreesASecond }: Aim): MotionRun {
  const manoeuvre = raiseOn(run.manoeuvre, time, toDeg * DEGREE, degreesASecond * DEGREE)
  return follow(
    run.models,
    manoeuvre,
    toDeg,
    run.traces.map(({ inBow }) => inBow[0]!),
  )
}

/** Times and slopes are the same in all traces. */
export const clockOf = (run: MotionRun): Pick<MotionTrace, "time" | "slope"> => run.traces[0]!

function follow(
  models: readonly MotionModel[],
  manoeuvre: Manoeuvre,
  toDeg: number,
  firstAngles?: readonly number[],
): MotionRun {
  const duration = manoeuvre.end + WATCHED_S
  const traces = models.map((model, index) =>
    traceMotion(model, manoeuvre, duration, 1 / SAMPLES_A_SECOND, firstAngles?.[index]),
  )
  return { models, manoeuvre, toDeg, traces, sum: sumMoments(traces) }
}
