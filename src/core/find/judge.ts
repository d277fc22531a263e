import { GRAVITY } from "../constants"
import type { FindProblem, Limit, Score } from "./problem"
import {
  FIRST,
  FORWARD_REACH,
  LEAST_HALF_LIFT,
  LEAST_HALF_WIDTH,
  LIMIT_SLACK,
  MASS,
  PITCH,
  ROLL,
  SCORE_STEP,
  SIDE_REACH,
  SUMS,
  YAW,
} from "./quantities"

/** What is compared: smaller is better, `first` before `second`; whole multiples of SCORE_STEP. */
export interface Keys {
  readonly first: number
  readonly second: number
}

export const resistanceAt = { roll: ROLL, yaw: YAW, pitch: PITCH } as const
export const reachAt = { forward: FORWARD_REACH, side: SIDE_REACH } as const

/** What a limit is about, SI, for a whole setup: `sums` with the base in, `reaches` of the whole rig. */
export function limitedValue(problem: FindProblem, limit: Limit, sums: Float64Array, reaches: Float64Array): number {
  switch (limit.kind) {
    case "balance":
      return sums[FIRST + limit.axis]! / sums[MASS]!
    case "netLift":
      return netLift(problem, sums)
    case "mass":
      return sums[MASS]! - problem.arrowMass
    case "resistance":
      return sums[resistanceAt[limit.axis]]!
    case "reach":
      return reaches[reachAt[limit.way]]!
  }
}

/** Lift of the line of pull less the nose-down moment of all that is on the drawn bow, N·m. */
export const netLift = ({ drawn, base }: FindProblem, sums: Float64Array): number =>
  drawn.lift - GRAVITY * (drawn.forwardMoment + (sums[FIRST]! - base[FIRST]!))

/** By how much a value is outside its limit, SI; 0 inside. */
export function missOf(limit: Limit, value: number): number {
  const below = "min" in limit ? limit.min - value : 0
  const above = "max" in limit ? value - limit.max : 0
  return Math.max(0, below, above)
}

/** The half-width a distance is counted in, and the middle it is counted from: of the limits with two sides only. */
export function middleOf(limit: Limit): { middle: number; half: number } | null {
  if (limit.kind !== "balance" && limit.kind !== "netLift") return null
  const least = limit.kind === "balance" ? LEAST_HALF_WIDTH : LEAST_HALF_LIFT
  return { middle: (limit.min + limit.max) / 2, half: Math.max(least, (limit.max - limit.min) / 2) }
}

/** A score as a whole multiple of SCORE_STEP. */
export const inSteps = (value: number): number => Math.round(value / SCORE_STEP)

/**
 * Judges one whole setup: its keys, or null when it breaks a limit. This alone decides; bounds of many setups at once
 * only ever spare the asking.
 */
export function judge(problem: FindProblem, sums: Float64Array, reaches: Float64Array): Keys | null {
  const { limits, score } = problem
  let distance = 0
  let missed = 0
  for (let index = 0; index < limits.length; index++) {
    const limit = limits[index]!
    const value = limitedValue(problem, limit, sums, reaches)
    const miss = missOf(limit, value)
    if (score.kind === "miss" && score.limit === index) missed = miss
    else if (miss > LIMIT_SLACK) return null
    const aim = middleOf(limit)
    if (aim !== null) distance += ((value - aim.middle) / aim.half) ** 2
  }
  return keysOf(score, Math.sqrt(distance), missed, sums[MASS]! - problem.arrowMass, turnResistance(sums), sums[MASS]!)
}

/** The three axes together, kg·m²: twice the sum of mass times squared distance from the grip. */
export const turnResistance = (sums: Float64Array): number => sums[ROLL]! + sums[YAW]! + sums[PITCH]!

/** Keys from what they are made of; monotone in each, so that bounds give a bound. `whole`: mass in the hold, kg. */
export function keysOf(
  score: Score,
  distance: number,
  missed: number,
  mass: number,
  resistance: number,
  whole: number,
): Keys {
  switch (score.kind) {
    case "nearest":
      return { first: inSteps(distance), second: inSteps(mass) }
    case "lightest":
      return { first: inSteps(mass), second: inSteps(distance) }
    case "steadiest":
      return { first: inSteps(-resistance), second: inSteps(distance) }
    case "steadyForMass":
      return { first: inSteps(-resistance / whole), second: inSteps(distance) }
    case "miss": {
      // Once a limit is met it does not matter by which setup.
      const first = inSteps(missed)
      return { first, second: first === 0 ? 0 : inSteps(distance) }
    }
  }
}

/** `into` = `row` of `from` added, and the larger reach kept. */
export function addOption(
  sums: Float64Array,
  reaches: Float64Array,
  from: { readonly sums: Float64Array; readonly reaches: Float64Array },
  row: number,
): void {
  for (let at = 0; at < SUMS; at++) sums[at]! += from.sums[row * SUMS + at]!
  for (let at = 0; at < reaches.length; at++)
    reaches[at] = Math.max(reaches[at]!, from.reaches[row * reaches.length + at]!)
}
