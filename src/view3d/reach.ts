import { along, multiply, type Vec3 } from "../core/solids"
import { hillRise } from "../picture/hill"
import { riserEnds } from "../picture/outline/riser"
import { nockAt, pullLine } from "../picture/pull"
import { nockPoint } from "../scene/assemble"
import type { Evaluation, WeighedPart } from "../scene/evaluate"

/**
 * Points that bound everything drawn of the bow as it is held, world axes, m: what a camera must show. Widths are
 * left to the camera's margin, except a box's corners.
 */
export function reachPoints({ scene, now }: Evaluation): Vec3[] {
  const { limbs, parts, rotation } = now
  // Room for the nock at full draw, so that the string can be drawn in a picture that holds still.
  const points: Vec3[] = [
    [0, 0, 0],
    now.centre,
    ...limbs.stringEnds,
    nockAt(scene, 1),
    ...(pullLine(scene, limbs) ?? []),
  ]
  for (const curve of limbs.curves ?? []) points.push(...curve)
  for (const solid of limbs.solids) points.push(solid.centre)
  for (const part of parts) points.push(...partPoints(part, scene.accessories))
  if (limbs.drawFraction > 0)
    points.push(along(nockPoint(scene.bow, limbs), [1, 0, 0], scene.bow.arrow.lengthMm * 1e-3))
  return points.map((point) => multiply(rotation, point))
}

function partPoints(part: WeighedPart, accessories: Evaluation["scene"]["accessories"]): Vec3[] {
  if (part.axis !== undefined) return [part.axis.start, along(part.axis.start, part.axis.direction, part.axis.length)]
  if (part.hung !== undefined) {
    const { hinge, rest, weight } = part.hung
    return [hinge, along(hinge, rest.direction, weight.stemLength)]
  }
  if (part.kind !== "accessory") return []
  const size = accessories[Number(part.address[1])]?.sizeMm ?? [0, 0, 0]
  const [hx, hy, hz] = [size[0] / 2000, size[1] / 2000, size[2] / 2000]
  return [
    [part.centre[0] - hx, part.centre[1] - hy, part.centre[2] - hz],
    [part.centre[0] + hx, part.centre[1] + hy, part.centre[2] + hz],
  ]
}

/** The ground keeps this far below the lowest part, m, and moves in steps, so that it stays put during small changes. */
const CLEARANCE = 0.03
const STEP = 0.05

/** Height of the ground where the archer stands, m: low enough that nothing reaches into the hillside around it. */
export function groundLevel(points: readonly Vec3[], slopeDeg = 0): number {
  const lowest = Math.min(0, ...points.map(([x, y]) => y - hillRise(x, slopeDeg)))
  return Math.floor((lowest - CLEARANCE) / STEP) * STEP
}

/** End of the line to the target on the ground, world axes, m; up a hill the top of the target on it. */
export const hillEnd = (to: number, ground: number, slopeDeg: number): Vec3 => [
  to,
  ground + hillRise(to, slopeDeg) + (slopeDeg > 0 ? TARGET : 0),
  0,
]
const TARGET = 0.3

/** The arm's dimension line keeps this far below what it must not cross, and above the ground, and moves in steps, m. */
const BELOW = { rig: 0.06, riser: 0.035, ground: 0.08, step: 0.02 }
/** Rods that begin and end further off than this, m, are not in its way. */
const NEARBY = 0.3

/**
 * Height at which the moment arm is drawn as a dimension, world axes, m: below the grip, the balance point, the riser and
 * whatever of the rig hangs near, so that neither rods nor their handles hide it.
 */
export function dimensionLevel({ scene, now }: Evaluation, ground: number): number {
  const { rotation } = now
  const ends = riserEnds(scene.bow)
  const riser = [ends.lower, ends.upper].map((y) => multiply(rotation, [ends.forward, y, 0]))
  const rig = now.parts
    .flatMap((part) => partPoints(part, []))
    .map((point) => multiply(rotation, point))
    .filter(([x]) => Math.abs(x) < NEARBY)
  const lowest = Math.min(
    multiply(rotation, now.centre)[1] - BELOW.rig,
    ...riser.map(([, y]) => y - BELOW.riser),
    ...rig.map(([, y]) => y - BELOW.rig),
  )
  return Math.max(Math.floor(lowest / BELOW.step) * BELOW.step, ground + BELOW.ground)
}

/** The line on the ground toward the target, m ahead of the grip: about as long as the bow reaches, in steps. */
export function groundLine(points: readonly Vec3[]): { readonly from: number; readonly to: number } {
  const furthest = Math.max(SHORTEST, ...points.map((point) => point[0]))
  return { from: 0.1, to: Math.ceil(furthest / (2 * STEP)) * 2 * STEP }
}
const SHORTEST = 0.6
