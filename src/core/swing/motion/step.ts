import { trySmoothStep } from "./advance"
import { driveAt } from "./drive"
import { heldBy, turningWay } from "./held"
import type { Manoeuvre } from "./manoeuvre"
import type { MotionModel } from "./model"
import { EVENTS_IN_STEP, HALVINGS, STEP_SLACK } from "./settings"
import type { MotionState } from "./state"

/**
 * Moves `state` on by `dt`, s, in place and without making objects, in equal steps no longer than the model's. The same
 * calls give the same numbers: no clock is read. Calls of a constant `dt` are what makes a picture repeatable.
 *
 * Stops are struck without rebound, by decision: the parts that stop a swing weight are padded, and how much a pad
 * gives back is nobody's data. A weight that reaches a stop, or whose turning friction brings to a halt, is located
 * inside the step.
 * @throws RangeError unless `dt` is finite and not negative.
 */
export function stepMotion(model: MotionModel, manoeuvre: Manoeuvre, state: MotionState, dt: number): void {
  if (!(dt >= 0) || !Number.isFinite(dt)) throw new RangeError("a time step must be finite and not negative")
  const steps = Math.max(1, Math.ceil(dt / model.step - STEP_SLACK))
  const from = state.time
  for (let step = 1; step <= steps; step++) {
    const until = from + (dt * step) / steps
    for (let join = nextJoin(manoeuvre, state.time); join < until; join = nextJoin(manoeuvre, join)) {
      stepTo(model, manoeuvre, state, join)
    }
    stepTo(model, manoeuvre, state, until)
  }
}

/** The manoeuvre's first join after `time`, s; Infinity after the last. */
function nextJoin({ joins }: Manoeuvre, time: number): number {
  for (let index = 0; index < joins.length; index++) if (joins[index]! > time) return joins[index]!
  return Number.POSITIVE_INFINITY
}

function stepTo(model: MotionModel, manoeuvre: Manoeuvre, state: MotionState, until: number): void {
  for (let event = 0; event < EVENTS_IN_STEP && state.time < until; event++) {
    driveAt(model, manoeuvre, state.time, state.room.start)
    if (heldBy(model, state.angle, state.rate, state.room.start) !== "free") stay(model, manoeuvre, state, until)
    else swing(model, manoeuvre, state, until)
  }
  if (state.time < until) {
    state.rate = 0
    state.time = until
  }
}

/** Lets time pass for a held weight, until it is torn loose or `until`. */
function stay(model: MotionModel, manoeuvre: Manoeuvre, state: MotionState, until: number): void {
  const { end } = state.room
  state.rate = 0
  driveAt(model, manoeuvre, until, end)
  if (heldBy(model, state.angle, 0, end) !== "free") {
    state.time = until
    return
  }
  let held = state.time
  let loose = until
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (held + loose) / 2
    driveAt(model, manoeuvre, middle, end)
    if (heldBy(model, state.angle, 0, end) === "free") loose = middle
    else held = middle
  }
  state.time = loose
}

/** Swings on to `until`, or to the stop or the halt that comes before it. */
function swing(model: MotionModel, manoeuvre: Manoeuvre, state: MotionState, until: number): void {
  const { room } = state
  const { trial } = room
  const way = turningWay(model, state, room.start)
  const whole = until - state.time
  trySmoothStep(model, manoeuvre, state, whole, way)
  if (!interrupted(model, trial, way)) {
    state.angle = trial[0]!
    state.rate = trial[1]!
    state.time = until
    const passed = room.start
    room.start = room.end
    room.end = passed
    return
  }
  let before = 0
  let after = whole
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (before + after) / 2
    trySmoothStep(model, manoeuvre, state, middle, way)
    if (interrupted(model, trial, way)) after = middle
    else before = middle
  }
  trySmoothStep(model, manoeuvre, state, after, way)
  const angle = trial[0]!
  state.angle = Math.max(-model.stop, Math.min(model.stop, angle))
  state.rate = 0
  state.time += after
}

/** Past a stop, or turning against the way that friction was reckoned for. */
const interrupted = (model: MotionModel, trial: Float64Array, way: number): boolean =>
  Math.abs(trial[0]!) > model.stop || trial[1]! * way < 0
