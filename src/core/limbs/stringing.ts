import { closeBy, holdOf, type Problem, type Unknowns } from "./equilibrium"
import { follow } from "./follow"
import { largestLoad, nearestBraceFarthest, nearestBraceFirst, nearestMargin, stepsPerPiece } from "./settings"
import { shapeOf, unstrungTip } from "./shape"
import { shoot } from "./shoot"
import type { LimbSetup } from "./types"

/** Forward of the root where the string lies at brace, over the limb's length. */
export const braceForward = ({ limb, braceHeight }: LimbSetup): number =>
  (-braceHeight - limb.rootForward) / limb.length

/** The strung limb at rest: the string straight in, at the brace height. */
export function braceProblem(setup: LimbSetup): Problem {
  return {
    shape: shapeOf(setup.limb),
    rootAngle: setup.limb.rootAngle,
    demand: { kind: "held", stringAngle: 0, forward: braceForward(setup) },
    wraps: setup.stringWrap === true,
  }
}

/** Whether the string pulls, from above the centre line, where the limb can carry it. */
function isStrung(setup: LimbSetup, unknowns: Unknowns): boolean {
  return unknowns.load > 0 && unknowns.load < largestLoad && halfStringOf(setup, unknowns) !== null
}

/** The strung limb, or the nearest brace height (m) that has one; neither where none was found. */
export interface Strung {
  readonly unknowns?: Unknowns
  readonly nearest?: number
}

/**
 * Bends the limb until its string lies at the brace height. `near`, the answer for a limb like this one, saves the way.
 * A limb that is not strung directly is strung at the nearest brace height where it is, and followed from there.
 */
export function stringUp(setup: LimbSetup, near?: Unknowns): Strung {
  if (near !== undefined) {
    const solved = closeBy(braceProblem(setup), near)
    if (solved !== null && isStrung(setup, solved.unknowns)) return { unknowns: solved.unknowns }
  }
  const unknowns = stringDirectly(setup)
  if (unknowns !== null) return { unknowns }
  for (let away = nearestBraceFirst; away <= nearestBraceFarthest; away *= 2) {
    for (const side of [1, -1]) {
      const elsewhere = { ...setup, braceHeight: setup.braceHeight + side * away }
      const start = stringDirectly(elsewhere)
      if (start !== null) return restring(setup, elsewhere.braceHeight, start)
    }
  }
  return {}
}

/** From the solved brace height `known` to the setup's own, or as near as it goes. */
function restring(setup: LimbSetup, known: number, start: Unknowns): Strung {
  const at = (braceHeight: number): LimbSetup => ({ ...setup, braceHeight })
  const followed = follow(
    (braceHeight) => braceProblem(at(braceHeight)),
    start,
    known,
    setup.braceHeight,
    (unknowns) => isStrung(setup, unknowns),
  )
  if (followed.arrived) return { unknowns: followed.unknowns }
  const back = Math.sign(known - setup.braceHeight) * nearestMargin
  return { nearest: Math.abs(known - followed.reached) > nearestMargin ? followed.reached + back : known }
}

/**
 * The way there starts where the answer is known, a straight limb standing straight out, pulled straight back by
 * nothing; on the way the string turns straight in, its place moves to the brace height, and the limb takes its own
 * lean and recurve. Limbs that leave this path at a fold are tried again from their own unstrung shape.
 */
function stringDirectly(setup: LimbSetup): Unknowns | null {
  const goal = braceProblem(setup)
  const forward = braceForward(setup)
  if (!(forward < 0 && forward > -1)) return null
  for (const pathFrom of [fromStraightLimb, fromUnstrungLimb]) {
    const path = pathFrom(goal, forward)
    const followed = follow(path.problemAt, path.start, 0, 1)
    if (followed.arrived && isStrung(setup, followed.unknowns)) return followed.unknowns
  }
  return null
}

interface Path {
  problemAt: (share: number) => Problem
  start: Unknowns
}

function fromStraightLimb({ shape, rootAngle, wraps }: Problem, forward: number): Path {
  return {
    start: { lift: Math.PI / 2, load: 0 },
    problemAt: (share) => ({
      shape: { ...shape, recurve: shape.recurve * share },
      rootAngle: rootAngle * share,
      demand: { kind: "held", stringAngle: (Math.PI / 2) * (1 - share), forward: forward * share },
      wraps,
    }),
  }
}

/** Pulled square to the line from root to tip, backward. */
function fromUnstrungLimb({ shape, rootAngle, wraps }: Problem, forward: number): Path {
  const tip = unstrungTip(shape, rootAngle)
  const pull = Math.atan2(tip.forward, tip.out) + Math.PI / 2
  return {
    start: { lift: pull - rootAngle - shape.recurve, load: 0 },
    problemAt: (share) => ({
      shape,
      rootAngle,
      demand: { kind: "held", stringAngle: pull * (1 - share), forward: tip.forward + (forward - tip.forward) * share },
      wraps,
    }),
  }
}

/** From string middle to tip along string and covered limb, m; null when the string would leave below the centre line. */
export function halfStringOf(setup: LimbSetup, unknowns: Unknowns): number | null {
  const { limb } = setup
  const problem = braceProblem(setup)
  const hold = holdOf(problem.shape, unknowns, problem.wraps)
  const root = shoot(problem.shape, hold, false, stepsPerPiece)
  const free = limb.rootOut + limb.length * root.along
  return free > 0 ? free + limb.length * (1 - hold.contact) : null
}
