import { fillStepFactors } from "./damped"
import { driveAt, pullAt } from "./drive"
import type { Manoeuvre } from "./manoeuvre"
import type { MotionModel } from "./model"
import type { MotionState } from "./state"

/**
 * One smooth step of length `step`, s, from `state`, with friction pushing against the turning `way` (+1, -1; 0
 * without friction). The result is left in `state.room.trial` as angle and rate; the state itself stays.
 *
 * The method is the fourth-order exponential Runge–Kutta scheme of Cox and Matthews (J. Comput. Phys. 176, 2002; from
 * memory) for θ̈ + γ θ̇ = f(θ, t): the damped coasting is solved exactly, so heavy damping, which makes the equation
 * stiff, costs no smaller steps; without damping it is an explicit fourth-order method for θ̈ = f(θ, t). It is not
 * symplectic: its energy drift falls with the fourth power of the step and is bounded by test.
 */
export function trySmoothStep(model: MotionModel, manoeuvre: Manoeuvre, state: MotionState, step: number, way: number) {
  const { start, middle, end, factors, trial } = state.room
  const { angle, rate } = state
  fillStepFactors(factors, step, model.damping / model.aboutJoint)
  driveAt(model, manoeuvre, state.time, start)
  driveAt(model, manoeuvre, state.time + step / 2, middle)
  driveAt(model, manoeuvre, state.time + step, end)
  const drag = (way * model.friction) / model.aboutJoint
  const first = pullAt(start, angle) - drag
  const coasted = angle + factors.halfReach * rate
  const angleA = coasted + factors.halfPush * first
  const rateA = factors.halfLeft * rate + factors.halfReach * first
  const second = pullAt(middle, angleA) - drag
  const third = pullAt(middle, coasted + factors.halfPush * second) - drag
  const fourth = pullAt(end, angleA + factors.halfReach * rateA + factors.halfPush * (2 * third - first)) - drag
  const between = second + third
  trial[0] =
    angle +
    factors.reach * rate +
    factors.angleStart * first +
    factors.angleMiddle * between +
    factors.angleEnd * fourth
  trial[1] = factors.left * rate + factors.rateStart * first + factors.rateMiddle * between + factors.rateEnd * fourth
}
