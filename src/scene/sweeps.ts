import { type PoseBalance, poseBalance, type Evaluation, evaluate } from "./evaluate"
import { type Result, success } from "./errors"
import { type Figures, figuresOf } from "./figures"
import { unsolvable } from "./limbErrors"
import { placeLimbs } from "./limbPlace"
import type { Bow, Scene } from "./schema"

export interface SlopeFigures {
  readonly slopeDeg: number
  readonly noseDownNm: number
  readonly netLiftNm: number
}

export interface DrawPoint {
  /** From the grip pivot back to the nock, mm. */
  readonly drawMm: number
  /** On the fingers, N. */
  readonly forceN: number
}

/** What `report --json` prints for one scene. */
export interface Report extends Figures {
  readonly slopes: readonly SlopeFigures[]
  readonly drawCurve: readonly DrawPoint[]
}

/** The steepest slope of the table and its step, degrees: beyond 45° no field course shoots (common practice, no source). */
const STEEPEST = 45
const SLOPE_STEP = 5

/** Steps from brace to full draw: a smooth plot, and exact marks at halves, quarters and tenths of the draw. */
const DRAW_STEPS = 40

/** All figures of a scene at its pose, with its behaviour on slopes and its draw curve. */
export function reportOf(scene: Scene): Result<{ evaluation: Evaluation; report: Report }> {
  const evaluated = evaluate(scene)
  if (!evaluated.ok) return evaluated
  const evaluation = evaluated.value
  const curve = drawCurve(scene.bow)
  if (!curve.ok) return curve
  const report = { ...figuresOf(evaluation), slopes: slopeSweep(scene, evaluation), drawCurve: curve.value }
  return success({ evaluation, report })
}

/**
 * The balance at full draw, uncanted, from 45° down to 45° up. The limbs' shape and the lift of the line of pull do
 * not change with slope, so both are taken from the level full draw.
 */
export function slopeSweep(scene: Scene, { fullDraw }: Evaluation): SlopeFigures[] {
  const count = (2 * STEEPEST) / SLOPE_STEP + 1
  return Array.from({ length: count }, (_, index) => {
    const slopeDeg = index * SLOPE_STEP - STEEPEST
    const { noseDown } = onSlope(scene, fullDraw, slopeDeg)
    return { slopeDeg, noseDownNm: noseDown, netLiftNm: fullDraw.lift - noseDown }
  })
}

const onSlope = (scene: Scene, drawn: PoseBalance, slopeDeg: number): PoseBalance =>
  poseBalance(scene, drawn.limbs, { draw: 1, slopeDeg, cantDeg: 0 })

/** Force against draw from brace to full draw, evenly spaced. */
export function drawCurve(bow: Bow): Result<DrawPoint[]> {
  const points: DrawPoint[] = []
  for (let step = 0; step <= DRAW_STEPS; step++) {
    const place = placeLimbs(bow, step / DRAW_STEPS)
    if (!place.ok) return unsolvable(place)
    points.push({ drawMm: place.value.draw * 1e3, forceN: place.value.holdForce })
  }
  return success(points)
}
