import { type BracedLimbs, drawCurve as limbCurve } from "../core/limbs"
import { type Result, success } from "./errors"
import { unsolvable } from "./limbErrors"
import { bracedLimbs } from "./recurvePlace"
import type { Bow } from "./schema"
import { drawCurve, type DrawPoint } from "./sweeps"

export interface WorkPoint extends DrawPoint {
  /** Work of the fingers from brace to here, J. */
  readonly workJ: number
}

/** The draw curve with the energy that drawing stores. */
export interface DrawWork {
  /** From brace to full draw, evenly spaced. */
  readonly points: readonly WorkPoint[]
  /** Stored at full draw, J. */
  readonly storedJ: number
  /**
   * Stored energy over draw force times the way from brace to full draw, both at full draw: a half for a straight
   * line through nothing at brace. Null for a compound, whose curve is a sketch.
   */
  readonly fullness: number | null
  /** From nock to nock along the string, and along the limbs where it lies on them, m; null for a compound. */
  readonly stringLength: number | null
  /** The curve is the usual shape between the bow's own ends and peak, not a solved one. */
  readonly sketch: boolean
}

/** Steps of the curve: smooth as drawn, and the work good to far better than a scale can measure. */
const STEPS = 40

/** The draw curve and its work. Fails only where the limbs cannot take a shape on the way. */
export function drawWork(bow: Bow): Result<DrawWork> {
  if (bow.kind === "compound") {
    const points = sketched(bow)
    if (!points.ok) return points
    const storedJ = points.value.at(-1)!.workJ
    return success({ points: points.value, storedJ, fullness: null, stringLength: null, sketch: true })
  }
  const braced = bracedLimbs(bow)
  if (!braced.ok) return unsolvable(braced)
  const points = solved(braced.value)
  if (!points.ok) return points
  const first = points.value[0]!
  const last = points.value.at(-1)!
  const fullness = last.workJ / (last.forceN * ((last.drawMm - first.drawMm) / 1e3))
  const stringLength = 2 * braced.value.halfString
  return success({ points: points.value, storedJ: last.workJ, fullness, stringLength, sketch: false })
}

/**
 * Force of another bow's curve at each of these draws, N, straight between its points; null where that bow is not yet
 * drawn or is past its full draw.
 */
export function forcesAt({ points }: Pick<DrawWork, "points">, drawsMm: readonly number[]): (number | null)[] {
  const [first, last] = [points[0]!.drawMm, points.at(-1)!.drawMm]
  return drawsMm.map((draw) => {
    if (draw < first || draw > last) return null
    const next = Math.max(
      1,
      points.findIndex(({ drawMm }) => drawMm >= draw),
    )
    const [a, b] = [points[next - 1]!, points[next]!]
    return a.forceN + ((b.forceN - a.forceN) * (draw - a.drawMm)) / (b.drawMm - a.drawMm)
  })
}

/** The same where it costs next to nothing: for limbs whose curve has been solved, and for a sketch. Else null. */
export function knownDrawWork(bow: Bow): Result<DrawWork> | null {
  if (bow.kind === "compound") return drawWork(bow)
  const braced = bracedLimbs(bow)
  return braced.ok && !known.has(braced.value) ? null : drawWork(bow)
}

/** Kept by the strung limbs, so that a nock height or a riser dragged along costs nothing here. */
const known = new WeakMap<BracedLimbs, readonly WorkPoint[]>()

function solved(braced: BracedLimbs): Result<readonly WorkPoint[]> {
  const found = known.get(braced)
  if (found !== undefined) return success(found)
  const curve = limbCurve(braced, STEPS + 1)
  if (!curve.ok) return unsolvable(curve)
  const points = curve.value.map(({ draw, force, work }) => ({ drawMm: draw * 1e3, forceN: force, workJ: work }))
  known.set(braced, points)
  return success(points)
}

/** Sums a sketch's force by the trapezoid rule: more exact than the sketch itself. */
function sketched(bow: Bow): Result<WorkPoint[]> {
  const curve = drawCurve(bow)
  if (!curve.ok) return curve
  let workJ = 0
  return success(
    curve.value.map((point, index, all) => {
      const before = all[index - 1]
      if (before !== undefined) workJ += ((point.forceN + before.forceN) / 2) * ((point.drawMm - before.drawMm) / 1e3)
      return { ...point, workJ }
    }),
  )
}
