import { add, distance, scale, subtract, type Vec3 } from "../core/solids"
import { partTitle } from "../describe/partNames"
import { short } from "../describe/placeWords"
import type { UnitChoice } from "../describe/format"
import type { ScreenPoint } from "../picture/drag"
import type { Pane } from "../picture/handle"
import { metres, stringLine } from "../scene/assemble"
import type { Evaluation, WeighedPart } from "../scene/evaluate"
import { corners } from "./bodies"
import { around, type Box, type LabelWish } from "./labels"
import type { Draw } from "./shape"

/** A line of the drawing keeps labels this far from its middle, px. */
const CLEAR = 12

const paneFor = (path: string): Pane => (/\/(left|right)\//.test(path) ? "top" : "side")

/** Names with masses for rig parts and accessories, the heaviest first, in the drawing that shows each best. */
export const partWishes = (
  { scene, now }: Evaluation,
  draws: Readonly<Record<Pane, Draw>>,
  units: UnitChoice,
): LabelWish[] =>
  now.parts
    .filter(({ path, mass }) => !path.startsWith("bow/") && mass > 0)
    .sort((a, b) => b.mass - a.mass)
    .map(({ path, mass, centre }) => ({
      id: path,
      text: `${partTitle(scene, path)} ${short(mass * 1e3, "mass", units)}`,
      at: draws[paneFor(path)](centre),
    }))

/** The places that lines and parts of both drawings take: labels stay off them. */
export function drawnBoxes({ scene, now }: Evaluation, draws: Readonly<Record<Pane, Draw>>): Box[] {
  const { limbs } = now
  const side = [stringLine(scene.bow, limbs), ...(limbs.curves ?? [])].flatMap((points) => sampled(points, draws.side))
  const riser = sampled([limbs.curves?.[0][0] ?? limbs.solids[0].centre, [0.02, 0, 0]], draws.side).concat(
    sampled([limbs.curves?.[1][0] ?? limbs.solids[1].centre, [0.02, 0, 0]], draws.side),
  )
  const parts = now.parts.flatMap((part) => [...sampled(lineOf(part), draws.side), ...sampled(lineOf(part), draws.top)])
  const boxes = scene.accessories.flatMap(({ centreMm, sizeMm }) => {
    if (sizeMm === undefined) return []
    const ends = corners(metres(centreMm), metres(sizeMm))
    return [draws.side, draws.top].map((draw) => boundingBox(ends.map(draw)))
  })
  return [...boxes, ...[...side, ...riser, ...parts].map((point) => around(point, CLEAR, CLEAR))]
}

function boundingBox(points: readonly ScreenPoint[]): Box {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)]
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) }
}

function lineOf({ axis, hung, kind, centre }: WeighedPart): Vec3[] {
  if (axis !== undefined) return [axis.start, add(axis.start, scale(axis.direction, axis.length))]
  if (hung !== undefined) return [hung.hinge, add(hung.hinge, scale(hung.rest.direction, hung.weight.stemLength))]
  return kind === "accessory" ? [centre, centre] : []
}

/** Points on the page about `CLEAR` px apart along a line through points of the bow. */
function sampled(points: readonly Vec3[], draw: Draw) {
  return points.slice(1).flatMap((to, index) => {
    const from = points[index]!
    if (distance(from, to) === 0) return [draw(from)]
    const [a, b] = [draw(from), draw(to)]
    const steps = Math.max(1, Math.ceil(Math.hypot(a.x - b.x, a.y - b.y) / CLEAR))
    return Array.from({ length: steps + 1 }, (_, step) => draw(add(from, scale(subtract(to, from), step / steps))))
  })
}
