import { drawUnknowns } from "./drawn"
import { braceUnreachable, drawBelowBrace, limbGivesWay, notConverged } from "./failures"
import type { Unknowns } from "./equilibrium"
import { branchOf } from "./follow"
import { drawnProblem } from "./geometry"
import { describeState } from "./state"
import { halfStringOf, stringUp } from "./stringing"
import type { BracedLimbs, LimbResult, LimbSetup } from "./types"
import { invalidSetup } from "./validate"

/**
 * Strings the bow and scales its stiffness to the draw weight.
 *
 * At brace the string is straight in at forward = -braceHeight, which gives the half string's length; the shape depends
 * on tension/EI₀ alone, so EI₀ is the one that makes the force at `drawLength` the draw weight. `near`, a bow like this
 * one already solved, saves the way there. A failure names the quantity and, where one was found, the nearest value
 * that works.
 */
export function solveBrace(setup: LimbSetup, near?: BracedLimbs): LimbResult<BracedLimbs> {
  const invalid = invalidSetup(setup)
  if (invalid !== null) return invalid
  const { braceHeight, drawLength, drawWeight } = setup
  if (!(drawLength > braceHeight)) return drawBelowBrace(braceHeight, drawLength)

  const { unknowns: atRest, nearest } = stringUp(setup, near?.brace.unknowns)
  const halfString = atRest === undefined ? null : halfStringOf(setup, atRest)
  if (atRest === undefined || halfString === null) return braceUnreachable(setup, nearest)

  const branch = branchOf(drawnProblem(setup, halfString, braceHeight), atRest)
  const from = { at: braceHeight, unknowns: atRest }
  const drawn = drawUnknowns(setup, halfString, from, drawLength, branch, near?.full.unknowns)
  if (!drawn.ok) return drawn

  const stateAt = (draw: number, unknowns: Unknowns, rootStiffness: number) =>
    describeState(setup, drawnProblem(setup, halfString, draw), unknowns, draw, rootStiffness)
  const forcePerStiffness = stateAt(drawLength, drawn.value, 1)?.drawForce ?? Number.NaN
  if (!(forcePerStiffness > 0)) return limbGivesWay(drawLength, undefined)
  const rootStiffness = drawWeight / forcePerStiffness
  const brace = stateAt(braceHeight, atRest, rootStiffness)
  const full = stateAt(drawLength, drawn.value, rootStiffness)
  if (brace === null || full === null) return notConverged(drawLength)
  return { ok: true, value: { setup, halfString, rootStiffness, branch, brace, full } }
}
