import { type Coordinates, MASS_COORDINATE } from "./coordinates"
import { type Keys, keysOf, middleOf, reachAt } from "./judge"
import type { FindProblem, Limit } from "./problem"
import { BOUND_SLACK } from "./quantities"

/** The least and greatest coordinates and the least reaches of many setups at once. */
export interface Range {
  readonly low: Float64Array
  readonly high: Float64Array
  readonly reach: Float64Array
}

interface Rule {
  readonly limit: Limit
  readonly coordinate: number
  /** Half of a two-sided limit's own width, and the half-width distances are counted in. */
  readonly half: number
  readonly counted: number
  readonly binds: boolean
}

/** Keys that no setup in the range can better, or null when none in it can meet every limit. */
export type Bound = (range: Range) => Keys | null

/**
 * The bound of a problem. Of a balance limit only the moment about the target's middle u and the mass M are known:
 * the balance point is |u|/M from the middle, so at least least|u| over greatest M.
 */
export function boundOf(problem: FindProblem, coordinates: Coordinates): Bound {
  const { score, arrowMass } = problem
  const rules = problem.limits.map(
    (limit, index): Rule => ({
      limit,
      coordinate: coordinates.ofLimit[index]!,
      half: limit.kind === "balance" || limit.kind === "netLift" ? (limit.max - limit.min) / 2 : 0,
      counted: middleOf(limit)?.half ?? 0,
      binds: !(score.kind === "miss" && score.limit === index),
    }),
  )
  return ({ low, high, reach }) => {
    const leastMass = low[MASS_COORDINATE]! - BOUND_SLACK
    const mostMass = high[MASS_COORDINATE]! + BOUND_SLACK
    let distance = 0
    let missed = 0
    for (let index = 0; index < rules.length; index++) {
      const rule = rules[index]!
      const { limit } = rule
      let miss = 0
      if (limit.kind === "balance" || limit.kind === "netLift") {
        const from = low[rule.coordinate]!
        const to = high[rule.coordinate]!
        const off = (from > 0 ? from : to < 0 ? -to : 0) - BOUND_SLACK
        if (off > 0) {
          const per = limit.kind === "balance" ? off / mostMass : off
          distance += (per / rule.counted) ** 2
          miss = per - rule.half
        }
      } else if (limit.kind === "mass") miss = leastMass - arrowMass - limit.max
      else if (limit.kind === "resistance") miss = limit.min - high[rule.coordinate]! - BOUND_SLACK
      else miss = reach[reachAt[limit.way]]! - limit.max - BOUND_SLACK
      if (!rule.binds) missed = Math.max(0, miss)
      else if (miss > BOUND_SLACK) return null
    }
    const resistance = coordinates.resistance < 0 ? 0 : high[coordinates.resistance]! + BOUND_SLACK
    return keysOf(score, Math.sqrt(distance), missed, leastMass - arrowMass, resistance, leastMass)
  }
}
