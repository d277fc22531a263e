import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import { lockedFromPlumb } from "../../describe/hillText"
import type { PlotContent, PlotLine } from "../plot/plotted"
import type { MotionRun } from "./motionRun"

/** Part of the height kept free above the curves for the words that stand there. */
const HEAD_ROOM = 0.14

/** The plots of one run in shown units, and how far their axes reach, so that nothing moves while it runs. */
export interface MotionPlots {
  readonly seconds: readonly number[]
  readonly bowDeg: readonly number[]
  readonly freeDeg: readonly number[]
  readonly lockedDeg: readonly number[]
  readonly free: readonly number[]
  readonly locked: readonly number[]
  readonly still: number
  readonly angleSpan: readonly [number, number]
  readonly momentSpan: readonly [number, number]
}

/** `factor` takes N·m to the chosen unit. */
export function motionPlots({ trace, manoeuvre }: MotionRun, factor: number): MotionPlots {
  const bowDeg = Array.from(trace.slope, (slope) => slope / DEGREE)
  const freeDeg = Array.from(trace.fromPlumb, (angle) => angle / DEGREE)
  const lockedDeg = freeDeg.map((_, index) => lockedFromPlumb(trace, index) / DEGREE)
  const free = Array.from(trace.moment, (moment) => moment * factor)
  const locked = Array.from(trace.lockedMoment, (moment) => moment * factor)
  return {
    seconds: Array.from(trace.time),
    bowDeg,
    freeDeg,
    lockedDeg,
    free,
    locked,
    still: manoeuvre.end,
    angleSpan: spanOf([bowDeg, freeDeg, lockedDeg]),
    momentSpan: spanOf([free, locked]),
  }
}

/** What is to be seen of the angles once `count` samples have passed. */
export const angleContent = (plots: MotionPlots, count: number): PlotContent => ({
  x: plots.seconds,
  lines: [
    line("weight", plots.freeDeg, count, { width: 2.5 }),
    line("locked", plots.lockedDeg, count, { dash: [8, 5] }),
    line("bow", plots.bowDeg, count, { dash: [2, 4], ink: "--ink-soft" }),
  ],
  marks: [{ kind: "upright", x: plots.still, text: "bow still" }],
})

export const momentContent = (plots: MotionPlots, count: number): PlotContent => ({
  x: plots.seconds,
  lines: [line("free", plots.free, count, { width: 2.5 }), line("locked", plots.locked, count, { dash: [8, 5] })],
  marks: [{ kind: "upright", x: plots.still, text: "bow still" }],
})

const line = (name: string, values: readonly number[], count: number, more: Partial<PlotLine>): PlotLine => ({
  name,
  values: values.map((value, index) => (index < count ? value : null)),
  width: 1.5,
  ink: "--ink",
  ...more,
})

function spanOf(curves: readonly (readonly number[])[]): [number, number] {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (const curve of curves) {
    for (const value of curve) {
      if (value < low) low = value
      if (value > high) high = value
    }
  }
  return [low, high + (high - low) * HEAD_ROOM]
}
