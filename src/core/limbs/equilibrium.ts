import {
  farthestFromPrediction,
  largestLoad,
  longestAngleStep,
  nearlySolvedResidual,
  newtonSteps,
  shortestNewtonShare,
  solvedResidual,
  stepsPerPiece,
} from "./settings"
import { type LimbHold, type LimbShape, recurveCurvature } from "./shape"
import { type Reading, shoot } from "./shoot"

/**
 * The two unknowns of a strung limb. `lift` (rad) says where and how the string leaves: at the tip, the limb there
 * leaning `lift` back from the string; or, when the string may lie on the limb and `lift` is negative, flat on a limb
 * whose last part, turning by -lift, is covered. The string's hold changes smoothly as `lift` passes through 0.
 */
export interface Unknowns {
  readonly lift: number
  readonly load: number
}

/** What a strung limb has to meet, lengths over the limb's. */
export type Demand =
  /** The string stands at `stringAngle` (rad from straight in) and leaves the limb at `forward` from the root. */
  | { readonly kind: "held"; readonly stringAngle: number; readonly forward: number }
  /** The nock is `back` behind the root and `inward` of it, `halfString` from the tip along string and limb. */
  | { readonly kind: "drawn"; readonly back: number; readonly inward: number; readonly halfString: number }

export interface Problem {
  readonly shape: LimbShape
  /** rad */
  readonly rootAngle: number
  readonly demand: Demand
  readonly wraps: boolean
  /** Integration steps over each piece; `stepsPerPiece` unless said. */
  readonly steps?: number
}

/** Closing errors of a demand, their derivatives by (lift, load), and the string's angle with its derivatives. */
export interface Closing {
  readonly first: number
  readonly second: number
  readonly firstByLift: number
  readonly firstByLoad: number
  readonly secondByLift: number
  readonly secondByLoad: number
  readonly stringAngle: number
  readonly stringAngleByLift: number
  readonly stringAngleByLoad: number
}

export interface Solved {
  readonly unknowns: Unknowns
  /** At the last evaluated point, whose closing error is below `nearlySolvedResidual`. */
  readonly at: Closing
}

/** Where and how the string leaves the limb. A contact inward of the recurve cannot be: the limb is straight there. */
export function holdOf(shape: LimbShape, unknowns: Unknowns, wraps: boolean): LimbHold {
  const covered = wraps && unknowns.lift < 0 && shape.recurve > 0
  if (!covered) return { contactAngle: -unknowns.lift, contact: 1, load: unknowns.load }
  return { contactAngle: 0, contact: 1 + unknowns.lift / recurveCurvature(shape), load: unknowns.load }
}

/** How far the limb is from meeting the demand, from its reading at the root. */
export function closingOf(root: Reading, hold: LimbHold, { shape, rootAngle, demand }: Problem): Closing {
  const covered = hold.contact < 1
  const contactByLift = covered ? 1 / recurveCurvature(shape) : 0
  const byLift = covered ? contactByLift : -1
  const angleByLift = root.angleByPlace * byLift
  const acrossByLift = root.acrossByPlace * byLift
  const alongByLift = root.alongByPlace * byLift
  const stringAngle = demand.kind === "held" ? demand.stringAngle : rootAngle - root.angle
  const cosine = Math.cos(stringAngle)
  const sine = Math.sin(stringAngle)
  if (demand.kind === "held") {
    return {
      first: root.angle + stringAngle - rootAngle,
      second: root.across * cosine + root.along * sine - demand.forward,
      firstByLift: angleByLift,
      firstByLoad: root.angleByLoad,
      secondByLift: acrossByLift * cosine + alongByLift * sine,
      secondByLoad: root.acrossByLoad * cosine + root.alongByLoad * sine,
      stringAngle,
      stringAngleByLift: 0,
      stringAngleByLoad: 0,
    }
  }
  const rootAcross = demand.back * cosine - demand.inward * sine
  const rootAlong = demand.back * sine + demand.inward * cosine
  return {
    first: rootAcross + root.across,
    second: rootAlong + root.along - demand.halfString + (1 - hold.contact),
    firstByLift: rootAlong * angleByLift + acrossByLift,
    firstByLoad: rootAlong * root.angleByLoad + root.acrossByLoad,
    secondByLift: -rootAcross * angleByLift + alongByLift - contactByLift,
    secondByLoad: -rootAcross * root.angleByLoad + root.alongByLoad,
    stringAngle,
    stringAngleByLift: -angleByLift,
    stringAngleByLoad: -root.angleByLoad,
  }
}

/** How far `unknowns` are from meeting the demand; null where the string cannot leave the limb so. */
export function closing(problem: Problem, unknowns: Unknowns): Closing | null {
  const { shape } = problem
  const hold = holdOf(shape, unknowns, problem.wraps)
  if (!(hold.contact > shape.recurveFrom) || !(Math.abs(hold.load) <= largestLoad)) return null
  return closingOf(shoot(shape, hold, false, problem.steps ?? stepsPerPiece), hold, problem)
}

export const determinant = (at: Closing): number => at.firstByLift * at.secondByLoad - at.firstByLoad * at.secondByLift

/** The change of the unknowns that changes the closing errors by (first, second); Cramer's rule. */
export function changeFor(at: Closing, first: number, second: number): Unknowns {
  const whole = determinant(at)
  return {
    lift: (first * at.secondByLoad - second * at.firstByLoad) / whole,
    load: (at.firstByLift * second - at.secondByLift * first) / whole,
  }
}

export const closingError = (at: Closing): number => Math.hypot(at.first, at.second)

const moved = (from: Unknowns, step: Unknowns, share: number): Unknowns => ({
  lift: from.lift + share * step.lift,
  load: from.load + share * step.load,
})

/**
 * Newton's iteration from `start` with the exact Jacobian, steps limited in angle and halved while the closing error
 * does not fall. Null when it does not arrive. From a closing error below `nearly` the last step is taken unchecked.
 */
export function solve(problem: Problem, start: Unknowns, nearly: number = nearlySolvedResidual): Solved | null {
  let unknowns = start
  let at = closing(problem, unknowns)
  for (let count = 0; count < newtonSteps && at !== null; count += 1) {
    const error = closingError(at)
    if (error < solvedResidual) return { unknowns, at }
    const step = changeFor(at, -at.first, -at.second)
    if (!Number.isFinite(step.lift) || !Number.isFinite(step.load)) return null
    if (error < nearly) return { unknowns: moved(unknowns, step, 1), at }
    let share = Math.min(1, longestAngleStep / Math.abs(step.lift))
    let next: Closing | null = null
    while (share >= shortestNewtonShare) {
      next = closing(problem, moved(unknowns, step, share))
      if (next !== null && closingError(next) < error) break
      next = null
      share /= 2
    }
    unknowns = moved(unknowns, step, share)
    at = next
  }
  return null
}

/** Solves from the answer to a like problem; null when the solution is not close to it. */
export function closeBy(problem: Problem, near: Unknowns): Solved | null {
  const solved = solve(problem, near)
  return solved !== null && Math.abs(solved.unknowns.lift - near.lift) < farthestFromPrediction ? solved : null
}
