import { add, along, distance, multiply, scale, subtract, type Vec3 } from "../core/solids"
import type { Pane } from "../picture/handle"
import { nockAt, pullLine } from "../picture/pull"
import { MM, nockPoint, stringLine } from "../scene/assemble"
import type { Evaluation } from "../scene/evaluate"
import type { Played } from "../state/played"
import { bandOf } from "./band"
import { corners } from "./bodies"
import { type Contents, type FlatPoint, flatten } from "./frames"
import { type FlatHill, hillPoints, hillUnder } from "./hill"

/** Lines are sampled this densely, m. */
const SAMPLE = 0.04
/** Half the width a bare bow has at its widest, m. */
const HALF_BOW = 0.06

export interface BothContents extends Readonly<Record<Pane, Contents>> {
  readonly hill: FlatHill | null
}

/**
 * What both drawings must have room for: the bow as held, or all of a motion that is played, and a setup held beside.
 * One that can be drawn by hand keeps room for the string.
 */
export function contentsOf(
  evaluation: Evaluation,
  played: Played | null = null,
  other: Evaluation | null = null,
  drawable = true,
): BothContents {
  const { scene } = evaluation
  const { rotation, pose, limbs } = evaluation.now
  const shown = [...(played?.room ?? [evaluation]), ...(other === null ? [] : [other])]
  const points = shown.flatMap((each) => reachOf(each).map((point) => multiply(each.now.rotation, point)))
  const contents = (pane: Pane, more: readonly FlatPoint[] = []): Contents => {
    const flat = [...points.map(flatten[pane]), ...more]
    return { points: flat, extent: { across: range(flat, 0), up: range(flat, 1) } }
  }
  const hill = hillUnder(points.map(flatten.side), played?.hillDeg ?? pose.slopeDeg)
  // The side drawing keeps room for the nock at full draw, so that the string can be drawn on a page that holds still;
  // the line of pull is drawn from the side only, once somebody pulls.
  const pull = pullLine(scene, limbs) ?? []
  const room = [...(drawable ? [nockAt(scene, 1)] : []), ...pull].map((point) =>
    flatten.side(multiply(rotation, point)),
  )
  return { side: contents("side", hill === null ? room : [...room, ...hillPoints(hill)]), top: contents("top"), hill }
}

function range(points: readonly FlatPoint[], index: 0 | 1): [number, number] {
  const values = points.map((point) => point[index])
  return [Math.min(...values), Math.max(...values)]
}

/** Points of everything, bow axes, m. */
function reachOf({ scene, now }: Evaluation): Vec3[] {
  const { limbs, parts } = now
  const points: Vec3[] = [
    [0, 0, HALF_BOW],
    [0, 0, -HALF_BOW],
    ...(limbs.curves?.flat() ?? limbs.solids.flatMap(({ centre }) => corners(centre, [0.1, 0.1, 0.03]))),
  ]
  const string = stringLine(scene.bow, limbs)
  for (let index = 1; index < string.length; index++) points.push(...line(string[index - 1]!, string[index]!))
  if (limbs.drawFraction > 0) {
    const nock = nockPoint(scene.bow, limbs)
    points.push(...line(nock, along(nock, [1, 0, 0], scene.bow.arrow.lengthMm * MM)))
  }
  for (const { axis, hung, kind, address, centre } of parts) {
    if (axis !== undefined) {
      const width = 2 * axis.outerRadius
      const ends: Vec3[] = [axis.start, along(axis.start, axis.direction, axis.length)]
      points.push(...line(ends[0]!, ends[1]!), ...ends.flatMap((end) => corners(end, [width, width, width])))
    }
    if (hung !== undefined)
      points.push(...line(hung.hinge, along(hung.hinge, hung.rest.direction, hung.weight.stemLength)))
    if (kind === "accessory") {
      const size = scene.accessories[address[1] as number]?.sizeMm ?? [0, 0, 0]
      points.push(...corners(centre, [size[0] * MM, size[1] * MM, size[2] * MM]))
    }
  }
  const band = bandOf(scene.target)
  if (band !== null) points.push(...corners(band.centre, band.size))
  return points
}

/** Points along a straight line, both ends among them. */
function line(from: Vec3, to: Vec3): Vec3[] {
  const steps = Math.max(1, Math.ceil(distance(from, to) / SAMPLE))
  return Array.from({ length: steps + 1 }, (_, index) => add(from, scale(subtract(to, from), index / steps)))
}
