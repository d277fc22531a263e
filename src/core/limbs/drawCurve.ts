import { solveDrawn } from "./drawn"
import type { BracedLimbs, DrawCurvePoint, LimbResult, LimbState } from "./types"

/**
 * The draw curve from brace height to the bow's draw length at `points` evenly spaced draws (2 or more).
 *
 * `work` sums the draw force by Hermite's rule with the exact slope of the curve, so it is independent of `energy`, the
 * bending energy the limbs hold. Fails as `solveDrawn` does.
 */
export function drawCurve(braced: BracedLimbs, points = 25): LimbResult<DrawCurvePoint[]> {
  const { brace, full } = braced
  const count = Math.max(2, Math.floor(points))
  const step = (full.draw - brace.draw) / (count - 1)
  const curve: DrawCurvePoint[] = []
  const states: LimbState[] = [brace]
  let work = 0
  // Braced, nobody holds the string: what force the solver leaves is its rounding.
  curve.push({ ...pointOf(braced, brace, work), force: 0 })
  for (let index = 1; index < count; index += 1) {
    const draw = index === count - 1 ? full.draw : brace.draw + index * step
    const solved = solveDrawn(braced, draw, ahead(states))
    if (!solved.ok) return solved
    const state = solved.value
    const last = states[index - 1] as LimbState
    work += (step * (last.drawForce + state.drawForce)) / 2
    work += (step ** 2 * (last.drawForceRate - state.drawForceRate)) / 12
    states.push(state)
    curve.push(pointOf(braced, state, work))
  }
  return { ok: true, value: curve }
}

const pointOf = ({ brace }: BracedLimbs, state: LimbState, work: number): DrawCurvePoint => ({
  draw: state.draw,
  force: state.drawForce,
  tension: state.stringTension,
  work,
  energy: 2 * (state.bendingEnergy - brace.bendingEnergy),
  tip: state.tip,
  centre: state.centre,
})

/** Weights of the last evenly spaced values, latest first, in the next one: the polynomial through one to four of them. */
const extrapolation = [[1], [2, -1], [3, -3, 1], [4, -6, 4, -1]] as const

/** The last state with its unknowns moved on along the polynomial through the last few. */
function ahead(states: readonly LimbState[]): LimbState {
  const recent = states.slice(-extrapolation.length).reverse()
  const weights = extrapolation[recent.length - 1] as readonly number[]
  const next = (name: "lift" | "load"): number =>
    recent.reduce((sum, { unknowns }, index) => sum + (weights[index] as number) * unknowns[name], 0)
  return { ...(recent[0] as LimbState), unknowns: { lift: next("lift"), load: next("load") } }
}
