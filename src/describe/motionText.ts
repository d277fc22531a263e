import type { MomentSum, MotionTrace } from "../core/swing/motion"
import { csvText } from "./csv"
import { fixed, said, type UnitChoice } from "./format"
import { slopeText } from "./poseText"

const DEGREE = Math.PI / 180
/** Angles below this, degrees, are shown as none. */
const SAME_DEG = 0.05
const HELD = ["", ", held by friction", ", on its stop"]

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
  const bow = slopeText(slope[index]! / DEGREE)
  const several = traces.length > 1
  const places = traces.map((trace, number) => `${several ? number + 1 : "weight"} ${placeText(trace, index)}`)
  const moments = [sum.moment, sum.lockedMoment].map((values) => said(values[index]!, "moment", units))
  const who = several ? "nose-down together" : "nose-down"
  return `${fixed(time[index]!, 2)}\u00a0s: bow ${bow}, ${places.join(", ")}; ${who} ${moments[0]} free, ${moments[1]} locked.`
}

function placeText({ fromPlumb, held }: MotionTrace, index: number): string {
  const off = fromPlumb[index]! / DEGREE
  const where =
    Math.abs(off) < SAME_DEG ? "plumb" : `${fixed(Math.abs(off), 1)}° ${off > 0 ? "ahead of" : "behind"} plumb`
  return where + (HELD[held[index]!] ?? "")
}

/** The weight locked in its joint where it started, rad from plumb, positive forward. */
export const lockedFromPlumb = ({ fromPlumb, inBow }: MotionTrace, index: number): number =>
  inBow[0]! + fromPlumb[index]! - inBow[index]!

/** A motion as a table for a spreadsheet, angles in degrees; `names` are the weights', one a trace. */
export function motionCsv(names: readonly string[], traces: readonly MotionTrace[], sum: MomentSum): string {
  const inDegrees = (radians: Float64Array) => Array.from(radians, (value) => value / DEGREE)
  const { time, slope } = traces[0]!
  return csvText([
    { heading: "time s", values: time },
    { heading: "slope deg", values: inDegrees(slope) },
    ...traces.flatMap((trace, index) => {
      const of = traces.length > 1 ? `${names[index]} ` : "weight "
      return [
        { heading: `${of}from plumb deg`, values: inDegrees(trace.fromPlumb) },
        { heading: `${of}in the bow's frame deg`, values: inDegrees(trace.inBow) },
        ...(traces.length > 1
          ? [
              { heading: `${of}nose-down moment free N·m`, values: trace.moment },
              { heading: `${of}nose-down moment locked N·m`, values: trace.lockedMoment },
            ]
          : []),
      ]
    }),
    { heading: "nose-down moment free N·m", values: sum.moment },
    { heading: "nose-down moment locked N·m", values: sum.lockedMoment },
  ])
}
