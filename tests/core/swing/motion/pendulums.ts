/** Pendulums and measurements for the tests of motion. All sizes are invented. */
import { GRAVITY, RADIAN_PER_DEGREE } from "../../../../src/core/constants"
import type { Vec3 } from "../../../../src/core/solids"
import type { SwingWeight } from "../../../../src/core/swing"
import {
  holdStill,
  type MotionModel,
  type MotionState,
  motionModel,
  startMotion,
  stepMotion,
} from "../../../../src/core/swing/motion"

export const DEGREE = RADIAN_PER_DEGREE
export const FRAME = 1 / 60
export const LEVEL = holdStill(0)

/** A stem with a bob as found on a bow; no stop. */
export const bowSwing = (more: Partial<SwingWeight> = {}): SwingWeight => ({
  stemLength: 0.17,
  stemMass: 0.019,
  bobMass: 0.151,
  bobRadius: 0.016,
  bobLength: 0.029,
  joint: "hinge",
  stop: Math.PI,
  ...more,
})

/** Mass in one point, `length` m from the joint. */
export const pointSwing = (length: number): SwingWeight => ({
  ...bowSwing({ stemLength: length, stemMass: 0, bobMass: 0.3 }),
  bobRadius: 0,
  bobLength: 0,
})

/** A uniform thin rod of `length` m whose middle is `offset` m from the joint. */
export const rodSwing = (length: number, offset: number): SwingWeight => ({
  ...bowSwing({ stemLength: offset, stemMass: 0, bobMass: 0.7 }),
  bobRadius: 0,
  bobLength: length,
})

interface Joint {
  hinge?: Vec3
  cant?: number
  friction?: number
  damping?: number
}

export const hung = (swing: SwingWeight, joint: Joint = {}): MotionModel =>
  motionModel(swing, { hinge: [0.05, -0.07, 0.02], cant: 0, friction: 0, damping: 0, ...joint })

/** √(M g l / I), rad/s. */
export const smallSwing = (model: MotionModel): number =>
  Math.sqrt((model.mass * GRAVITY * model.arm) / model.aboutJoint)

/** Carries a state on until `value` of it changes sign; the time is found to rounding by halving the last frame. */
export function untilSignChange(model: MotionModel, state: MotionState, value: (state: MotionState) => number): number {
  // One frame away from the start, where a weight let go from rest has rate 0.
  stepMotion(model, LEVEL, state, FRAME / 7)
  const sign = Math.sign(value(state))
  for (let frame = 0; frame < 60_000; frame++) {
    const { time, angle, rate } = state
    stepMotion(model, LEVEL, state, FRAME)
    if (Math.sign(value(state)) === sign) continue
    let [before, after] = [0, FRAME]
    for (let halving = 0; halving < 45; halving++) {
      const middle = (before + after) / 2
      Object.assign(state, { time, angle, rate })
      stepMotion(model, LEVEL, state, middle)
      if (Math.sign(value(state)) === sign) before = middle
      else after = middle
    }
    return state.time
  }
  throw new Error("no change of sign in a thousand seconds")
}

/** Period from the first two passages through plumb in the same direction, s, of a weight let go at `amplitude`, rad. */
export function measuredPeriod(model: MotionModel, amplitude: number): number {
  const state = startMotion(model, LEVEL, amplitude)
  const angle = (each: MotionState) => each.angle
  const first = untilSignChange(model, state, angle)
  untilSignChange(model, state, angle)
  return untilSignChange(model, state, angle) - first
}
