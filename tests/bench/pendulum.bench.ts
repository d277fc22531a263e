/** One second of a swing weight's motion, raised at 60°/s, against odex (Hairer's extrapolation code). */
import { Solver } from "../tools/odex.mjs"
import { GRAVITY, RADIAN_PER_DEGREE as DEGREE } from "../../src/core/constants"
import { motionModel, raise, startMotion, stepMotion } from "../../src/core/swing/motion"
import { bowSwing } from "../core/swing/motion/pendulums"
import type { Ratio } from "../tools/bench"
import { medianMs } from "./median"

const FRAMES = 60
const HINGE = [0.05, -0.07, 0.02] as const
const manoeuvre = raise(-5 * DEGREE, 30 * DEGREE, 60 * DEGREE)
const model = motionModel(bowSwing(), { hinge: HINGE, cant: 0, friction: 0, damping: 2e-4 })
const now = { slope: 0, rate: 0, acceleration: 0 }

/** Angle from plumb after one second, rad. */
function ours(): number {
  const state = startMotion(model, manoeuvre)
  for (let frame = 0; frame < FRAMES; frame++) stepMotion(model, manoeuvre, state, 1 / FRAMES)
  manoeuvre.at(1, now)
  return state.angle + now.slope
}

function slopeField(time: number, [psi, rate]: number[]): number[] {
  manoeuvre.at(time, now)
  const px = Math.cos(now.slope) * HINGE[0] - Math.sin(now.slope) * HINGE[1]
  const py = Math.sin(now.slope) * HINGE[0] + Math.cos(now.slope) * HINGE[1]
  const ax = -now.rate * now.rate * px - now.acceleration * py
  const ay = -now.rate * now.rate * py + now.acceleration * px
  const carried = ax * Math.cos(psi!) + (GRAVITY + ay) * Math.sin(psi!)
  return [rate!, (-model.mass * model.arm * carried - model.damping * (rate! - now.rate)) / model.aboutJoint]
}

/** The same by odex, with its answer asked for at every frame or only at the end. */
function theirs(tolerance: number, frames: number): number {
  const solver = new Solver(2)
  solver.absoluteTolerance = tolerance
  solver.relativeTolerance = tolerance
  let state = [0, 0]
  for (let frame = 0; frame < frames; frame++) {
    state = solver.solve(slopeField, frame / frames, state, (frame + 1) / frames).y
  }
  return state[0]!
}

export async function run(): Promise<Ratio[]> {
  const exact = theirs(1e-13, 1)
  const error = Math.abs(ours() - exact)
  // The loosest tolerance, in tens, at which odex comes as close.
  let tolerance = 1e-4
  while (tolerance > 1e-13 && Math.abs(theirs(tolerance, 1) - exact) > error) tolerance /= 10
  const own = medianMs(ours)
  const compare = (frames: number, against: string): Ratio => {
    const other = medianMs(() => theirs(tolerance, frames))
    const detail = `${own.toFixed(3)} ms (error ${error.toExponential(1)} rad) to ${other.toFixed(3)} ms; below 1 is faster`
    return { what: "one second of pendulum motion in 60 frames", ratio: own / other, against, detail }
  }
  const at = `odex at ${tolerance.toExponential(0)}`
  return [compare(FRAMES, `${at}, 60 frames`), compare(1, `${at}, the end only`)]
}
