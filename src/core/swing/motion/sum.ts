import type { MotionTrace } from "./trace"

/** What several swing weights bring on the grip together, nose-down, N·m; one entry a sample. See `MotionTrace`. */
export type MomentSum = Pick<MotionTrace, "moment" | "weightMoment" | "lockedMoment" | "lockedWeightMoment">

/**
 * Adds up the moments of several weights followed through one manoeuvre. How the bow moves is prescribed, so no weight
 * feels another, and their moments about the grip simply add.
 * @throws RangeError without a trace, and unless all have the same times and slopes.
 */
export function sumMoments(traces: readonly MotionTrace[]): MomentSum {
  const [first] = traces
  if (first === undefined) throw new RangeError("a sum needs at least one trace")
  for (const { time, slope } of traces) {
    if (!same(time, first.time) || !same(slope, first.slope)) {
      throw new RangeError("only weights followed through the same manoeuvre can be added up")
    }
  }
  const total = (of: (trace: MotionTrace) => Float64Array) =>
    first.time.map((_, index) => traces.reduce((sum, trace) => sum + of(trace)[index]!, 0))
  return {
    moment: total(({ moment }) => moment),
    weightMoment: total(({ weightMoment }) => weightMoment),
    lockedMoment: total(({ lockedMoment }) => lockedMoment),
    lockedWeightMoment: total(({ lockedWeightMoment }) => lockedWeightMoment),
  }
}

const same = (a: Float64Array, b: Float64Array): boolean =>
  a.length === b.length && a.every((value, index) => value === b[index])
