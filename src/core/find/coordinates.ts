import { GRAVITY } from "../constants"
import { middleOf, resistanceAt } from "./judge"
import type { FindProblem, Limit } from "./problem"
import { FIRST, MASS, PITCH, ROLL, SUMS, YAW } from "./quantities"

/**
 * The few linear combinations of the sums that limits and score ask about. Each adds over the branches as the sums
 * do, so the least and greatest of many setups are sums of leasts and greatests.
 */
export interface Coordinates {
  readonly count: number
  /** `count` rows of SUMS weights. */
  readonly weights: Float64Array
  /** What the base gives to each. */
  readonly base: Float64Array
  /** The coordinate each limit is about: moment about the target's middle, lift off the middle, resistance, mass. */
  readonly ofLimit: readonly number[]
  /** The three turn resistances together; -1 when the score does not ask. */
  readonly resistance: number
  /** What a change of each is worth when a branch is split, one over SI: about one over what matters. */
  readonly worth: Float64Array
}

/** Coordinate 0 is always the mass. */
export const MASS_COORDINATE = 0

export function coordinatesOf(problem: FindProblem): Coordinates {
  const rows: { weights: Float64Array; constant: number; worth: number }[] = []
  const add = (weights: Partial<Record<number, number>>, worth: number, constant = 0): number => {
    const row = Float64Array.from({ length: SUMS }, (_, at) => weights[at] ?? 0)
    rows.push({ weights: row, constant, worth })
    return rows.length - 1
  }
  const { base, limits, drawn, score } = problem
  const mass = base[MASS]!
  add({ [MASS]: 1 }, score.kind === "lightest" ? 5 / mass : 0.5 / mass)
  const coordinateOf = (limit: Limit): number => {
    switch (limit.kind) {
      case "balance": {
        const { middle, half } = middleOf(limit)!
        return add({ [FIRST + limit.axis]: 1, [MASS]: 0 - middle }, 1 / (half * mass))
      }
      case "netLift": {
        const { middle, half } = middleOf(limit)!
        const kept = drawn.lift - GRAVITY * (drawn.forwardMoment - base[FIRST]!)
        return add({ [FIRST]: 0 - GRAVITY }, 1 / half, kept - middle)
      }
      case "resistance":
        return add({ [resistanceAt[limit.axis]]: 1 }, 2 / limit.min)
      case "mass":
      case "reach":
        return MASS_COORDINATE
    }
  }
  const ofLimit = limits.map(coordinateOf)
  const asks = score.kind === "steadiest" || score.kind === "steadyForMass"
  const now = base[ROLL]! + base[YAW]! + base[PITCH]!
  const resistance = asks ? add({ [ROLL]: 1, [YAW]: 1, [PITCH]: 1 }, 5 / now) : -1
  const weights = new Float64Array(rows.length * SUMS)
  rows.forEach((row, index) => {
    weights.set(row.weights, index * SUMS)
  })
  const at = (index: number) => rows[index]!.weights.reduce((sum, weight, sums) => sum + weight * base[sums]!, 0)
  return {
    count: rows.length,
    weights,
    base: Float64Array.from(rows, (row, index) => row.constant + at(index)),
    ofLimit,
    resistance,
    worth: Float64Array.from(rows, ({ worth }) => (Number.isFinite(worth) ? worth : 0)),
  }
}

/** The coordinates of every option, row by row. */
export function coordinatesOfOptions(
  { count, weights }: Coordinates,
  sums: Float64Array,
  options: number,
): Float64Array {
  const found = new Float64Array(options * count)
  for (let option = 0; option < options; option++) {
    for (let row = 0; row < count; row++) {
      let value = 0
      for (let at = 0; at < SUMS; at++) value += weights[row * SUMS + at]! * sums[option * SUMS + at]!
      found[option * count + row] = value
    }
  }
  return found
}
