import { closeBy, closing, determinant, type Problem, type Solved, solve, type Unknowns } from "./equilibrium"
import {
  farthestFromLast,
  farthestFromPrediction,
  firstPathStep,
  nearlySolvedOnPath,
  shortestPathStep,
  stepsOnPath,
} from "./settings"

/** A solved state and where on a path it lies. */
export interface Waypoint {
  readonly at: number
  readonly unknowns: Unknowns
}

export interface Followed {
  /** Whether the end of the path was reached. */
  readonly arrived: boolean
  /** Where on the path the last solved state lies. */
  readonly reached: number
  readonly unknowns: Unknowns
}

/**
 * Follows a solved state along a path of problems from `from` to `to`, with steps that shrink where the next state is
 * not found and grow where it is. Never passes a fold (where the Jacobian's determinant changes sign), since beyond it
 * the limb would have snapped into another shape. States on the way are found on a coarse grid, the last one on the full
 * one. `start` must solve the problem at `from`; states that `allows` refuses end the path.
 */
export function follow(
  problemAt: (place: number) => Problem,
  start: Unknowns,
  from: number,
  to: number,
  allows: (unknowns: Unknowns) => boolean = () => true,
): Followed {
  if (from === to) return { arrived: true, reached: to, unknowns: start }
  const whole = to - from
  const coarse = (place: number): Problem => ({ ...problemAt(place), steps: stepsOnPath })
  const waypoints: Waypoint[] = [{ at: from, unknowns: start }]
  const branch = branchOf(coarse(from), start)
  let share = 0
  let step: number = firstPathStep
  let last = waypoints[0] as Waypoint
  while (share < 1 && step >= shortestPathStep) {
    const nextShare = Math.min(1, share + step)
    const place = nextShare === 1 ? to : from + nextShare * whole
    const predicted = predict(waypoints, place)
    const solved = solve(coarse(place), predicted, nearlySolvedOnPath)
    if (solved !== null && allows(solved.unknowns) && sameBranch(solved, branch, predicted, last.unknowns)) {
      last = { at: place, unknowns: solved.unknowns }
      waypoints.push(last)
      share = nextShare
      step *= 2
    } else step /= 2
  }
  const end = share === 1 ? closeBy(problemAt(to), last.unknowns) : null
  if (end !== null) return { arrived: true, reached: to, unknowns: end.unknowns }
  return { arrived: false, reached: last.at, unknowns: last.unknowns }
}

/** Sign of the Jacobian's determinant: it changes only at a fold, where the limb would snap. 0 where nothing is held. */
export function branchOf(problem: Problem, unknowns: Unknowns): number {
  const at = closing(problem, unknowns)
  return at === null ? 0 : Math.sign(determinant(at))
}

/** On the straight line through the last two states. */
function predict(waypoints: readonly Waypoint[], place: number): Unknowns {
  const last = waypoints[waypoints.length - 1] as Waypoint
  const before = waypoints[waypoints.length - 2]
  if (before === undefined) return last.unknowns
  const share = (place - last.at) / (last.at - before.at)
  return {
    lift: last.unknowns.lift + share * (last.unknowns.lift - before.unknowns.lift),
    load: last.unknowns.load + share * (last.unknowns.load - before.unknowns.load),
  }
}

function sameBranch({ unknowns, at }: Solved, branch: number, predicted: Unknowns, last: Unknowns): boolean {
  return (
    Math.sign(determinant(at)) === branch &&
    Math.abs(unknowns.lift - predicted.lift) < farthestFromPrediction &&
    Math.abs(unknowns.lift - last.lift) < farthestFromLast
  )
}
