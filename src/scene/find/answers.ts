import {
  chosenAt,
  FIRST,
  type FindProblem,
  FORWARD_REACH,
  type Found,
  limitedValue,
  MASS,
  middleOf,
  netLift,
  PITCH,
  ROLL,
  SCORE_STEP,
  SIDE_REACH,
  wholeOf,
  YAW,
} from "../../core/find"
import type { Vec3 } from "../../core/solids"
import type { RigEntry } from "../schema"
import type { SetupSpace } from "./space"

/** One setup that was found, in the report's units; balance point and turn resistance in the hold asked for. */
export interface FoundSetup {
  /** Its place in the order of plain enumeration: its name within one question. */
  readonly order: number
  readonly rig: readonly RigEntry[]
  readonly massG: number
  readonly centreMm: Vec3
  readonly netLiftNm: number
  /** kg·m² about the grip. */
  readonly pitch: number
  readonly yaw: number
  readonly roll: number
  /** Null when the rig has nothing that could stick out. */
  readonly reachForwardMm: number | null
  readonly reachSideMm: number | null
  /** From the middle of the targets, each counted in its half-widths. */
  readonly distance: number
  /** What it was ranked by, SI: half-widths, kg, minus kg·m², or minus m². */
  readonly score: number
}

export function foundSetup({ problem, rigAt }: Pick<SetupSpace, "problem" | "rigAt">, found: Found): FoundSetup {
  const { trunk, options } = chosenAt(problem, found.order)
  const { sums, reaches } = wholeOf(problem, trunk, options)
  const mass = sums[MASS]!
  const centre = (axis: number) => (sums[FIRST + axis]! / mass) * 1e3
  const reach = (way: number) => (Number.isFinite(reaches[way]) ? reaches[way]! * 1e3 : null)
  return {
    order: found.order,
    rig: rigAt(found.order),
    massG: (mass - problem.arrowMass) * 1e3,
    centreMm: [centre(0), centre(1), centre(2)],
    netLiftNm: netLift(problem, sums),
    pitch: sums[PITCH]!,
    yaw: sums[YAW]!,
    roll: sums[ROLL]!,
    reachForwardMm: reach(FORWARD_REACH),
    reachSideMm: reach(SIDE_REACH),
    distance: distanceOf(problem, sums, reaches),
    score: found.first * SCORE_STEP,
  }
}

function distanceOf(problem: FindProblem, sums: Float64Array, reaches: Float64Array): number {
  let squares = 0
  for (const limit of problem.limits) {
    const aim = middleOf(limit)
    if (aim !== null) squares += ((limitedValue(problem, limit, sums, reaches) - aim.middle) / aim.half) ** 2
  }
  return Math.sqrt(squares)
}
