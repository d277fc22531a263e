import { along, type Vec3 } from "../core/solids"
import { MM, nockPoint, stringLine } from "../scene/assemble"
import type { PoseBalance, WeighedPart } from "../scene/evaluate"
import type { Scene } from "../scene/schema"
import { corners, cylinder, ring } from "./bodies"
import { bowShapes } from "./bowShapes"
import { pathThrough } from "./outline"
import { type Draw, type Shape, solid } from "./shape"

/** Discs whose edges would be nearer than this on the page, px, are drawn as one block. */
const LEAST_DISC = 2.2

/** A part as it is drawn, back to front. */
export function shapesOf(scene: Scene, now: PoseBalance, part: WeighedPart, draw: Draw): Shape[] {
  switch (part.kind) {
    case "riser":
    case "limbs":
      return bowShapes(scene, now.limbs, part.kind, draw)
    case "string":
      return [{ look: "flat-string", path: pathThrough(stringLine(scene.bow, now.limbs).map(draw), false) }]
    case "arrow":
      return arrowShapes(scene, now, draw)
    case "accessory":
      return accessoryShapes(scene, part, draw)
    case "swing":
      return swingShapes(part, draw)
    default:
      return chainShapes(scene, part, draw)
  }
}

function chainShapes(scene: Scene, part: WeighedPart, draw: Draw): Shape[] {
  const { axis, kind, arms } = part
  if (axis === undefined || axis.length === 0) return []
  const { start, direction, length, outerRadius } = axis
  const body = solid(`flat-${kind}`, cylinder(start, direction, length, outerRadius), draw)
  if (kind === "vbar") {
    const middle = along(start, direction, length / 2)
    const stubs = Object.values(arms ?? {}).map((arm) => {
      const offset = Math.hypot(...arm.start.map((component, index) => component - middle[index]!))
      return solid("flat-vbar", cylinder(middle, arm.direction, offset, outerRadius * 0.5), draw)
    })
    return [...stubs, body]
  }
  if (kind !== "weights") return [body]
  const count = discCount(scene, part)
  const [a, b] = [draw(start), draw(along(start, direction, length))]
  if (Math.hypot(a.x - b.x, a.y - b.y) / count < LEAST_DISC) return [body]
  const edges = Array.from({ length: count - 1 }, (_, index) =>
    solid("flat-edge", ring(along(start, direction, (length * (index + 1)) / count), direction, outerRadius), draw),
  )
  return [body, ...edges]
}

function discCount(scene: Scene, part: WeighedPart): number {
  let here: unknown = scene
  for (const step of part.address) here = (here as Readonly<Record<string | number, unknown>>)[step]
  return (here as { count: number }).count
}

function swingShapes({ hung }: WeighedPart, draw: Draw): Shape[] {
  if (hung === undefined) return []
  const { weight, hinge, rest } = hung
  const bobTop = along(hinge, rest.direction, weight.stemLength - weight.bobLength)
  return [
    { look: "flat-stem", path: pathThrough([hinge, along(hinge, rest.direction, weight.stemLength)].map(draw), false) },
    solid("flat-swing", cylinder(bobTop, rest.direction, weight.bobLength, weight.bobRadius), draw),
    solid("flat-hinge", cylinder([hinge[0], hinge[1], hinge[2] - 0.006], [0, 0, 1], 0.012, 0.006), draw),
  ]
}

function accessoryShapes(scene: Scene, part: WeighedPart, draw: Draw): Shape[] {
  const size = scene.accessories[part.address[1] as number]?.sizeMm
  if (size !== undefined) {
    const edges: Vec3 = [size[0] * MM, size[1] * MM, size[2] * MM]
    return [solid("flat-accessory", corners(part.centre, edges), draw)]
  }
  const { x, y } = draw(part.centre)
  const point = [
    { x: x - 5, y },
    { x, y: y - 5 },
    { x: x + 5, y },
    { x, y: y + 5 },
  ]
  return [{ look: "flat-accessory", path: pathThrough(point, true) }]
}

/** Shaft, point and vanes; the sizes of the last two are drawn only. */
function arrowShapes(scene: Scene, now: PoseBalance, draw: Draw): Shape[] {
  const nock = nockPoint(scene.bow, now.limbs)
  const length = scene.bow.arrow.lengthMm * MM
  const at = (forward: number, up = 0, side = 0): Vec3 => [nock[0] + forward, nock[1] + up, nock[2] + side]
  const vane = (up: number, side: number) =>
    pathThrough([at(0.02), at(0.03, up, side), at(0.075, up * 0.2, side * 0.2), at(0.08)].map(draw), true)
  const tip = Math.min(0.025, length / 2)
  return [
    { look: "flat-vane", path: `${vane(0.011, 0)}${vane(-0.006, 0.01)}${vane(-0.006, -0.01)}` },
    { look: "flat-arrow", path: pathThrough([at(0), at(length - tip)].map(draw), false) },
    solid("flat-point", cylinder(at(length - tip), [1, 0, 0], 0, 0.0035).concat([at(length)]), draw),
  ]
}
