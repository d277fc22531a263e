import { type MeasuredBody, bodyOf, plausible, vectorOf } from "./body"
import { brokenRules, exactRules } from "./possible"
import type { Observation } from "./observation"
import { LEAST_MASS, MOST_STEPS, STILL, UNCHECKED } from "./settings"
import {
  type Decompose,
  directions,
  type Equation,
  isFiniteSystem,
  readings,
  stepped,
  type System,
  systemOf,
} from "./system"
import type { Row } from "./rows"
import { type Determined, type Known, standing } from "./spread"

/** One row of the fit as it was left. */
export interface FittedRow extends Row {
  /** Place of its observation in the list. */
  readonly of: number
  /** Residual over its own standard deviation in the fit; null where no other reading checks this one. */
  readonly studentised: number | null
  /** Share of its own variance that the fit leaves to the residual: 1 where others say it all, 0 where none does. */
  readonly free: number
}

export interface Fit extends Determined {
  /** As fitted; what is not determined is what was assumed. */
  readonly body: MeasuredBody
  /** False when the steps did not come to rest: no number of it is to be used. */
  readonly converged: boolean
  readonly rows: readonly FittedRow[]
  /** Of each unknown, in their order. */
  readonly known: readonly Known[]
  /** Largest over smallest singular value of what is determined. */
  readonly condition: number
  /** Sum of squared misses, and how many readings are left over to check the others. */
  readonly chiSquared: number
  readonly freedom: number
  /** Whether the radii of gyration had to be held at those of some body: read alone they would be of none. */
  readonly held: boolean
}

/**
 * The body that explains the readings best: weighted least squares by Gauss-Newton in plausible spans, from `assumed`,
 * along the determined directions only, with the step halved until it helps. A row's error depends a little on the
 * body; it is taken anew at each step. No readings: the assumed body, and nothing is known.
 */
export function fitBody(seen: readonly Observation[], assumed: MeasuredBody, decompose: Decompose): Fit {
  const free = solve(seen, assumed, decompose, [])
  const rules = brokenRules(free.body.squares)
  if (rules.length === 0 || !free.converged) return summary(seen, free, decompose, false)
  // Holding one rule may break another; there are three, and all three at once is a point.
  let held = solve(seen, assumed, decompose, rules)
  const more = brokenRules(held.body.squares).filter((rule) => !rules.includes(rule))
  if (more.length > 0) held = solve(seen, assumed, decompose, [...rules, ...more])
  return summary(seen, { ...held, body: { ...held.body, squares: exactRules(held.body.squares) } }, decompose, true)
}

interface Solved {
  readonly body: MeasuredBody
  readonly converged: boolean
}

function solve(
  seen: readonly Observation[],
  assumed: MeasuredBody,
  decompose: Decompose,
  rules: readonly number[],
): Solved {
  let vector = vectorOf(assumed)
  for (let count = 0; count < MOST_STEPS; count++) {
    const system = equations(seen, vector, rules)
    if (!isFiniteSystem(system)) break
    const { known } = directions(system, decompose)
    const step = plausible.map((_, k) =>
      known.reduce((sum, { along, miss, deviation }) => sum + along[k]! * miss * deviation, 0),
    )
    const size = Math.max(...step.map(Math.abs))
    if (!Number.isFinite(size)) break
    if (size < STILL) return { body: bodyOf(vector), converged: true }
    const shorter = helpfulStep(seen, vector, step, system, rules)
    if (shorter === null) return { body: bodyOf(vector), converged: size < Math.sqrt(STILL) }
    vector = shorter
  }
  return { body: bodyOf(vector), converged: false }
}

/** The vector after the step, or after the longest half, quarter … of it that lessens the misses; null when none does. */
function helpfulStep(
  seen: readonly Observation[],
  vector: readonly number[],
  step: readonly number[],
  { rows, misses }: System,
  rules: readonly number[],
): number[] | null {
  const before = sumOfSquares(misses)
  for (let share = 1; share > 1e-6; share /= 2) {
    const next = stepped(
      vector,
      step.map((part) => part * share),
    )
    if (!(next[0]! > LEAST_MASS)) continue
    const after = equations(seen, next, rules)
    // The errors stay those before the step: with them moving, a step could win by blurring a reading.
    const misses = after.rows.map(({ residual }, i) => residual / rows[i]!.error)
    if (sumOfSquares(misses) <= before * (1 + 1e-12) + 1e-20) return next
  }
  return null
}

const equations = (seen: readonly Observation[], vector: readonly number[], rules: readonly number[]): System =>
  systemOf([...readings(seen, bodyOf(vector)), ...ruleEquations(vector, rules)])

/** The rules of radii that are held, each as an equation that is all but exact: to a square millimetre. */
function ruleEquations(vector: readonly number[], rules: readonly number[]): Equation[] {
  const squares = vector.slice(4)
  return rules.map((axis) => {
    const signs = squares.map((_, k) => (k === axis ? 1 : -1))
    const excess = squares.reduce((sum, square, k) => sum + signs[k]! * square, 0)
    return { residual: 0 - excess, error: RULE_ERROR, gradient: [0, 0, 0, 0, ...signs] }
  })
}

/** m². */
const RULE_ERROR = 1e-6

function summary(seen: readonly Observation[], { body, converged }: Solved, decompose: Decompose, held: boolean): Fit {
  const system = systemOf(readings(seen, body))
  const { known, unknown, condition } = directions(
    isFiniteSystem(system) ? system : { misses: [], jacobian: [] },
    decompose,
  )
  const rows = system.rows.map((row, i): FittedRow => {
    const free = 1 - known.reduce((sum, { left }) => sum + (left[i] ?? 0) ** 2, 0)
    return { ...row, free, studentised: free > UNCHECKED ? system.misses[i]! / Math.sqrt(free) : null }
  })
  const determined: Determined = { directions: known, undetermined: unknown.map(({ along }) => along) }
  return {
    body,
    converged,
    rows,
    known: plausible.map(
      (_, k) =>
        standing(
          determined,
          plausible.map((_, i) => (i === k ? 1 : 0)),
        ).known,
    ),
    ...determined,
    condition,
    chiSquared: sumOfSquares(system.misses),
    freedom: rows.length - known.length,
    held,
  }
}

const sumOfSquares = (values: readonly number[]): number => values.reduce((sum, value) => sum + value * value, 0)
