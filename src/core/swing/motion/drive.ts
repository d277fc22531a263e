import { GRAVITY } from "../../constants"
import type { Manoeuvre, SlopeNow } from "./manoeuvre"
import type { MotionModel } from "./model"

/** What the bow's motion and gravity do to the weight at one instant, before damping and friction. */
export interface Drive {
  time: number
  readonly now: SlopeNow
  /** Of the slope; kept while the bow is held still. */
  sine: number
  cosine: number
  sineOf: number
  /** Coefficients of the angular acceleration, rad/s²: of cos θ, of sin θ, of one and of sin θ cos θ. */
  forward: number
  down: number
  steady: number
  whirl: number
  manoeuvre: Manoeuvre | null
  model: MotionModel | null
}

export const newDrive = (): Drive => ({
  time: Number.NaN,
  now: { slope: 0, rate: 0, acceleration: 0 },
  sine: 0,
  cosine: 1,
  sineOf: 0,
  forward: 0,
  down: 0,
  steady: 0,
  whirl: 0,
  manoeuvre: null,
  model: null,
})

/**
 * Fills in `drive` for `time`. With θ the angle in the plane, s the slope, n the axis of raising in the bow (tilted by
 * the cant κ: n = (0, sin κ, cos κ)), r = joint + l·d(θ) the weight's centre and e = d′(θ) across the stem, Newton and
 * Euler about the joint in axes that turn with the bow give
 *
 *     I θ̈ = M g l ĝ·e - M l (s̈ n×r + ṡ² n×(n×r))·e - Ic s̈ cos κ + ṡ² sin²κ (Ic - Ia) sin θ cos θ - c θ̇ - τ sign θ̇
 *
 * I about the joint, Ic and Ia about the centre across and along the stem. Written out, with b = y cos κ - z sin κ the
 * joint's height in the world's upright plane before raising:
 *
 *     M l (-g sin s + b s̈ + x ṡ²) cos θ + M l cos κ (-g cos s - x s̈ + b ṡ²) sin θ - I s̈ cos κ
 *         + ṡ² sin²κ (I - Ia) sin θ cos θ
 *
 * For an uncanted bow and ψ = θ + s it is the textbook pendulum on a moving support, I ψ̈ = -M g l sin ψ -
 * M l (p̈x cos ψ + p̈y sin ψ) with p the joint in the world; the tests solve that form independently.
 */
export function driveAt(model: MotionModel, manoeuvre: Manoeuvre, time: number, drive: Drive): void {
  if (drive.time === time && drive.manoeuvre === manoeuvre && drive.model === model) return
  drive.time = time
  drive.manoeuvre = manoeuvre
  drive.model = model
  const { now } = drive
  manoeuvre.at(time, now)
  if (now.slope !== drive.sineOf) {
    drive.sine = Math.sin(now.slope)
    drive.cosine = Math.cos(now.slope)
    drive.sineOf = now.slope
  }
  const { mass, arm, aboutJoint, alongCentre, joint, upright, tilted } = model
  if (!(aboutJoint > 0)) return
  const height = upright * joint[1] - tilted * joint[2]
  const perMoment = (mass * arm) / aboutJoint
  const whirl = now.rate * now.rate
  drive.forward = perMoment * (-GRAVITY * drive.sine + height * now.acceleration + joint[0] * whirl)
  drive.down = perMoment * upright * (-GRAVITY * drive.cosine - joint[0] * now.acceleration + height * whirl)
  drive.steady = -upright * now.acceleration
  drive.whirl = whirl * tilted * tilted * (1 - alongCentre / aboutJoint)
}

/** Angular acceleration in the plane from all but damping and friction, rad/s². */
export function pullAt(drive: Drive, angle: number): number {
  const sine = Math.sin(angle)
  const cosine = Math.cos(angle)
  return drive.forward * cosine + drive.down * sine + drive.steady + drive.whirl * sine * cosine
}
