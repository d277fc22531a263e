import type { MotionTrace } from "../../core/swing/motion"
import { lockedFromPlumb } from "../../describe/motionText"
import { hills } from "../../words/hills"
import type { PlotContent, PlotLine } from "../plot/plotted"
import { clockOf, type MotionRun } from "./motionRun"

const words = hills.motion
const DEGREE = Math.PI / 180

/** Part of the height kept free above the curves for the words that stand there. */
const HEAD_ROOM = 0.14

/** One line of a plot; weights that move alike share theirs. */
export interface Curve {
  readonly name: string
  readonly values: readonly number[]
}

/** The plots of one run in shown units, and how far their axes reach, so that nothing moves while it runs. */
export interface MotionPlots {
  readonly seconds: readonly number[]
  readonly bow: Curve
  readonly free: readonly Curve[]
  readonly locked: readonly Curve[]
  /** Moments of all weights together. */
  readonly sum: Curve
  readonly sumLocked: Curve
  /** Of each weight by itself; none where there is only one. */
  readonly each: readonly Curve[]
  readonly still: number
  readonly angleSpan: readonly [number, number]
  readonly momentSpan: readonly [number, number]
}

/** `factor` takes N·m to the chosen unit. */
export function motionPlots(run: MotionRun, factor: number): MotionPlots {
  const { traces, manoeuvre, sum } = run
  const alone = traces.length === 1
  const { time, slope } = clockOf(run)
  const degrees = (values: ArrayLike<number>) => Array.from(values, (angle) => angle / DEGREE)
  const moments = (values: Float64Array) => Array.from(values, (moment) => moment * factor)
  const name = (numbers: readonly number[], only: string) => (alone ? only : numbers.join(" + "))
  const angles = groups(traces, ({ fromPlumb }) => fromPlumb)
  const locks = groups(traces, lockedAngles)
  const bow: Curve = { name: words.bow, values: degrees(slope) }
  const free = angles.map(({ numbers, values }) => ({ name: name(numbers, words.weight), values: degrees(values) }))
  const locked = locks.map(({ numbers, values }) => ({
    name: alone || locks.length === 1 ? words.locked : words.lockedOf(numbers.join(" + ")),
    values: degrees(values),
  }))
  const total: Curve = { name: alone ? words.free : words.allFree, values: moments(sum.moment) }
  const totalLocked: Curve = { name: alone ? words.locked : words.allLocked, values: moments(sum.lockedMoment) }
  const each = alone
    ? []
    : traces.map(({ moment }, index): Curve => ({ name: String(index + 1), values: moments(moment) }))
  return {
    seconds: Array.from(time),
    bow,
    free,
    locked,
    sum: total,
    sumLocked: totalLocked,
    each,
    still: manoeuvre.end,
    angleSpan: spanOf([bow, ...free, ...locked]),
    momentSpan: spanOf([total, totalLocked, ...each]),
  }
}

/** The locked weight's angle from plumb at every sample, rad. */
const lockedAngles = (trace: MotionTrace): Float64Array => trace.time.map((_, index) => lockedFromPlumb(trace, index))

interface Group {
  readonly numbers: number[]
  readonly values: Float64Array
}

/** Differences that no plot shows, rad. */
const ALIKE = 1e-9

/** Weights, numbered from 1, that have the same curve. */
function groups(traces: readonly MotionTrace[], of: (trace: MotionTrace) => Float64Array): Group[] {
  const found: Group[] = []
  traces.forEach((trace, index) => {
    const values = of(trace)
    const like = found.find((group) => group.values.every((value, at) => Math.abs(value - values[at]!) < ALIKE))
    if (like === undefined) found.push({ numbers: [index + 1], values })
    else like.numbers.push(index + 1)
  })
  return found
}

const FREE = { width: 2.5 }
const LOCKED = { dash: [8, 5] }
const ASIDE = { dash: [2, 4], ink: "--ink-soft" } as const

/** What is to be seen of the angles once `count` samples have passed, with the sample looked at. */
export const angleContent = (plots: MotionPlots, count: number, at: number | null = null): PlotContent => ({
  x: plots.seconds,
  lines: [
    ...plots.free.map((curve) => line(curve, count, FREE)),
    ...plots.locked.map((curve) => line(curve, count, LOCKED)),
    line(plots.bow, count, ASIDE),
  ],
  marks: marks(plots, at),
})

export const momentContent = (plots: MotionPlots, count: number, at: number | null = null): PlotContent => ({
  x: plots.seconds,
  lines: [
    line(plots.sum, count, FREE),
    line(plots.sumLocked, count, LOCKED),
    ...plots.each.map((curve) => line(curve, count, { width: 1 })),
  ],
  marks: marks(plots, at),
})

const marks = ({ still, seconds }: MotionPlots, at: number | null): PlotContent["marks"] => [
  { kind: "upright", x: still, text: words.bowStill },
  ...(at === null ? [] : [{ kind: "upright", x: seconds[at]!, text: "" } as const]),
]

const line = ({ name, values }: Curve, count: number, more: Partial<PlotLine>): PlotLine => ({
  name,
  values: values.map((value, index) => (index < count ? value : null)),
  width: 1.5,
  ink: "--ink",
  ...more,
})

function spanOf(curves: readonly Curve[]): [number, number] {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (const { values } of curves) {
    for (const value of values) {
      if (value < low) low = value
      if (value > high) high = value
    }
  }
  return [low, high + (high - low) * HEAD_ROOM]
}
