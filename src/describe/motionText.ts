import type { MomentSum, MotionTrace } from "../core/swing/motion"
import { hills } from "../words/hills"
import { csvText } from "./csv"
import { fixed, said, type UnitChoice, withUnit } from "./format"
import { slopeText } from "./poseText"

const words = hills.motion
const DEGREE = Math.PI / 180
/** Angles below this, degrees, are shown as none. */
const SAME_DEG = 0.05

/**
 * "1.20 s: bow 12.3° up, weight 4.5° behind plumb; nose-down 0.52 N·m free, 0.61 N·m locked." Of several weights each
 * is said by its number, and the moments are those of all together.
 */
export function motionPointText(
  traces: readonly MotionTrace[],
  sum: MomentSum,
  index: number,
  units: UnitChoice,
): string {
  const { time, slope } = traces[0]!
  const [first, ...others] = traces.map((trace) => placeText(trace, index)) as [string, ...string[]]
  const when = withUnit(fixed(time[index]!, 2), "s")
  const bow = slopeText(slope[index]! / DEGREE)
  const [free, locked] = [sum.moment, sum.lockedMoment].map((values) => said(values[index]!, "moment", units))
  if (others.length === 0) return words.at(when, bow, first, free!, locked!)
  const places = [first, ...others].map((place, number) => words.numbered(number + 1, place))
  return words.atOfSeveral(when, bow, places.join(", "), free!, locked!)
}

function placeText({ fromPlumb, held }: MotionTrace, index: number): string {
  const off = fromPlumb[index]! / DEGREE
  const size = `${fixed(Math.abs(off), 1)}°`
  const where = Math.abs(off) < SAME_DEG ? words.isPlumb : (off > 0 ? words.ahead : words.behind)(size)
  switch (held[index]) {
    case 1:
      return words.byFriction(where)
    case 2:
      return words.onStop(where)
    default:
      return where
  }
}

/** The weight locked in its joint where it started, rad from plumb, positive forward. */
export const lockedFromPlumb = ({ fromPlumb, inBow }: MotionTrace, index: number): number =>
  inBow[0]! + fromPlumb[index]! - inBow[index]!

/** A motion as a table for a spreadsheet, angles in degrees; `names` are the weights', one a trace. */
export function motionCsv(names: readonly string[], traces: readonly MotionTrace[], sum: MomentSum): string {
  const inDegrees = (radians: Float64Array) => Array.from(radians, (value) => value / DEGREE)
  const { time, slope } = traces[0]!
  const { csv } = words
  const several = traces.length > 1
  return csvText([
    { heading: csv.time, values: time },
    { heading: csv.slope, values: inDegrees(slope) },
    ...traces.flatMap((trace, index) => {
      const of = several ? names[index]! : csv.weight
      return [
        { heading: csv.fromPlumb(of), values: inDegrees(trace.fromPlumb) },
        { heading: csv.inBow(of), values: inDegrees(trace.inBow) },
        ...(several
          ? [
              { heading: csv.freeOf(of), values: trace.moment },
              { heading: csv.lockedOf(of), values: trace.lockedMoment },
            ]
          : []),
      ]
    }),
    { heading: csv.free, values: sum.moment },
    { heading: csv.locked, values: sum.lockedMoment },
  ])
}
