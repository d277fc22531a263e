import { distance, type Vec3 } from "../core/solids"
import type { Projected } from "./projector"

export interface ScreenPoint {
  readonly x: number
  readonly y: number
}

/** What a drag must know of a handle. */
export interface Draggable {
  /** Where the handle is for a value, world axes, m. */
  readonly place: (value: number) => Vec3
  readonly value: number
  readonly min: number
  readonly max: number
  readonly step: number
}

/** Below this share of its length seen square on, a movement counts as seen end-on: within about 9° of the line of sight. */
const END_ON = 0.15
/** Seen end-on, a step takes at least this far, px, so that a still hand does not race. */
const LEAST_PX_END_ON = 0.5
/** Where a movement is measured in the picture: this length of it, m. */
const PROBE = 0.001
/** Enough for a smooth line or arc of a few hundred px to settle to a hundredth of a step. */
const MOST_STEPS = 12

/**
 * Begins a drag: the returned function gives the value (in range, not snapped) for where the pointer now is. The
 * handle keeps its distance from the pointer. How the pointer leads is settled by the view at the start:
 * - usually the handle goes to the point of its path that is nearest to the pointer in the picture;
 * - where one step would be less than `leastPxPerStep`, the movement along the path's picture counts, slowed down;
 * - where the path is seen end-on, moving the pointer up is more and down is less.
 */
export function startDrag(
  handle: Draggable,
  project: (world: Vec3) => Projected,
  pointer: ScreenPoint,
  leastPxPerStep = 0,
): (pointer: ScreenPoint) => number {
  const { place, value, min, max, step } = handle
  const inRange = (candidate: number) => Math.min(max, Math.max(min, candidate))
  const anchor = project(place(value))
  const { tangent, squareOn } = rateAt(handle, project, value)
  const speed = Math.hypot(tangent.x, tangent.y)

  if (!(speed > END_ON * squareOn)) {
    const pxPerUnit = Math.max(squareOn, leastPxPerStep / step, LEAST_PX_END_ON / step)
    return ({ y }) => inRange(value + (pointer.y - y) / pxPerUnit)
  }
  if (speed * step < leastPxPerStep) {
    const pxPerUnit = leastPxPerStep / step
    return ({ x, y }) => {
      const moved = ((x - pointer.x) * tangent.x + (y - pointer.y) * tangent.y) / speed
      return inRange(value + moved / pxPerUnit)
    }
  }
  let last = value
  return ({ x, y }) => {
    const target = { x: anchor.x + x - pointer.x, y: anchor.y + y - pointer.y }
    last = nearest(handle, project, last, target)
    return last
  }
}

/** px per unit of the value at one value: as seen, and as it would be seen square on. */
function rateAt(handle: Draggable, project: (world: Vec3) => Projected, value: number) {
  const { place, min, max, step } = handle
  const low = Math.max(min, value - step / 2)
  const high = Math.min(max, value + step / 2)
  const [from, to] = [place(low), place(high)]
  const span = high - low
  const [a, b] = [project(from), project(to)]
  const tangent = { x: (b.x - a.x) / span, y: (b.y - a.y) / span }
  return { tangent, squareOn: (distance(from, to) / span) * pxPerMetre(project, from) }
}

/** Scale of the picture around a point, from the axis that is least foreshortened there. */
function pxPerMetre(project: (world: Vec3) => Projected, [x, y, z]: Vec3): number {
  const here = project([x, y, z])
  const ends: Vec3[] = [
    [x + PROBE, y, z],
    [x, y + PROBE, z],
    [x, y, z + PROBE],
  ]
  return Math.max(...ends.map((end) => gap(project(end), here))) / PROBE
}

const gap = (a: ScreenPoint, b: ScreenPoint): number => Math.hypot(a.x - b.x, a.y - b.y)

/**
 * The value near `start` whose picture is nearest to `target`: Gauss–Newton along the one-parameter path, each step
 * halved until it comes closer, so that it neither overshoots an arc's turning point nor leaves its range.
 */
function nearest(handle: Draggable, project: (world: Vec3) => Projected, start: number, target: ScreenPoint): number {
  const { place, min, max, step } = handle
  const inRange = (candidate: number) => Math.min(max, Math.max(min, candidate))
  const missBy = (candidate: number) => {
    const seen = project(place(candidate))
    return seen.visible ? gap(seen, target) : Number.POSITIVE_INFINITY
  }
  const longest = (max - min) / 8
  let value = start
  let miss = missBy(value)
  for (let turn = 0; turn < MOST_STEPS; turn++) {
    const { tangent } = rateAt(handle, project, value)
    const squared = tangent.x ** 2 + tangent.y ** 2
    if (!(squared > 0)) break
    const seen = project(place(value))
    const full = ((target.x - seen.x) * tangent.x + (target.y - seen.y) * tangent.y) / squared
    let move = Math.max(-longest, Math.min(longest, full))
    let next = inRange(value + move)
    let nextMiss = missBy(next)
    while (nextMiss >= miss && Math.abs(move) > step / 100) {
      move /= 2
      next = inRange(value + move)
      nextMiss = missBy(next)
    }
    if (nextMiss >= miss) break
    const moved = Math.abs(next - value)
    value = next
    miss = nextMiss
    if (moved < step / 100) break
  }
  return value
}
