import { GRAVITY } from "../../constants"
import { type Drive, pullAt } from "./drive"
import { heldBy, turningWay } from "./held"
import type { MotionModel } from "./model"
import type { MotionState } from "./state"

/** Angular acceleration in the joint at this instant, rad/s²; 0 while held. `drive` is that of the state's time. */
export function jointAcceleration(model: MotionModel, state: MotionState, drive: Drive): number {
  if (heldBy(model, state.angle, state.rate, drive) !== "free") return 0
  const drag = turningWay(model, state, drive) * model.friction + model.damping * state.rate
  return pullAt(drive, state.angle) - drag / model.aboutJoint
}

/** Gravity's nose-down moment of the weight about the grip with its stem at `angle`, N·m: M g (R r).x. */
export function weightMoment(model: MotionModel, angle: number, slope: number): number {
  const { mass, arm, joint, upright, tilted } = model
  const forward = joint[0] + arm * Math.sin(angle)
  const up = joint[1] - arm * Math.cos(angle)
  const height = upright * up - tilted * joint[2]
  return mass * GRAVITY * (Math.cos(slope) * forward - Math.sin(slope) * height)
}

/**
 * Nose-down moment that the weight in motion brings on the bow about the grip, N·m, about the level axis of raising.
 * The bow's moment on the weight is what changes its angular momentum H about the grip, less gravity's; the weight's
 * on the bow is its opposite, so
 *
 *     nose-down = M g (R r).x + n·dH/dt
 *
 * n the axis of raising, fixed in world and bow, and H = Ic, Ia with the weight's own turning + M r × v. With q = n×r:
 *
 *     n·dH/dt = Ic (s̈ + θ̈ cos κ) + (Ia - Ic) sin²κ (s̈ cos²θ - 2 ṡ θ̇ sin θ cos θ)
 *               + M (s̈ |q|² + 2 ṡ θ̇ l (e·r - (n·e)(n·r)) + l θ̈ e·q - l θ̇² d·q)
 *
 * It holds the forces of joint, friction and stop alike: all that passes between weight and bow.
 */
export function movingMoment(
  model: MotionModel,
  angle: number,
  rate: number,
  acceleration: number,
  { now }: Drive,
): number {
  const { mass, arm, acrossCentre, alongCentre, joint, upright, tilted } = model
  const [x, y, z] = joint
  const sine = Math.sin(angle)
  const cosine = Math.cos(angle)
  const height = upright * y - tilted * z
  const [forward, up] = [x + arm * sine, y - arm * cosine]
  const alongAxis = tilted * up + upright * z
  const fromAxis = forward * forward + up * up + z * z - alongAxis * alongAxis
  const acrossStem = x * cosine + y * sine - tilted * sine * alongAxis
  const sweep = upright * (arm + x * sine) - height * cosine
  const inward = -height * sine - upright * x * cosine
  const turning =
    acrossCentre * (now.acceleration + acceleration * upright) +
    (alongCentre - acrossCentre) * tilted * tilted * (now.acceleration * cosine - 2 * now.rate * rate * sine) * cosine
  const carried =
    now.acceleration * fromAxis + arm * (2 * now.rate * rate * acrossStem + acceleration * sweep - rate * rate * inward)
  return weightMoment(model, angle, now.slope) + turning + mass * carried
}

/** Energy of the swing on a bow held still at `slope`, J, counted from hanging plumb at rest in its plane. */
export function swingEnergy(model: MotionModel, angle: number, rate: number, slope: number): number {
  const inPlane = Math.hypot(Math.sin(slope), model.upright * Math.cos(slope))
  const along = -Math.sin(slope) * Math.sin(angle) + model.upright * Math.cos(slope) * Math.cos(angle)
  return (model.aboutJoint * rate * rate) / 2 + model.mass * GRAVITY * model.arm * (inPlane - along)
}
