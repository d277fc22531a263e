import { closeBy, determinant, type Unknowns } from "./equilibrium"
import { drawBelowBrace, drawPastString, limbGivesWay, notConverged } from "./failures"
import { follow, type Waypoint } from "./follow"
import { drawnProblem, straightDraw } from "./geometry"
import { nearestMargin } from "./settings"
import { describeState } from "./state"
import type { BracedLimbs, LimbResult, LimbSetup, LimbState } from "./types"

/**
 * The limb with its nock `draw` metres behind the grip's pivot, from brace height to as far as limb and string reach
 * (also beyond the bow's own draw length). `near`, a state close by, is where the search starts.
 */
export function solveDrawn(braced: BracedLimbs, draw: number, near?: LimbState): LimbResult<LimbState> {
  const { setup, halfString, rootStiffness, brace, full } = braced
  if (!(draw >= setup.braceHeight)) return drawBelowBrace(setup.braceHeight, draw)
  if (draw === brace.draw) return { ok: true, value: brace }
  if (draw === full.draw) return { ok: true, value: full }
  const known = draw - brace.draw < Math.abs(full.draw - draw) ? brace : full
  const from = { at: known.draw, unknowns: known.unknowns }
  const solved = drawUnknowns(setup, halfString, from, draw, braced.branch, near?.unknowns)
  if (!solved.ok) return solved
  const problem = drawnProblem(setup, halfString, draw)
  const state = describeState(setup, problem, solved.value, draw, rootStiffness)
  return state === null ? notConverged(draw) : { ok: true, value: state }
}

/** The unknowns at `draw`, followed from the solved state `from` unless `near` leads there at once, on the same `branch`. */
export function drawUnknowns(
  setup: LimbSetup,
  halfString: number,
  from: Waypoint,
  draw: number,
  branch: number,
  near?: Unknowns,
): LimbResult<Unknowns> {
  const problemAt = (place: number) => drawnProblem(setup, halfString, place)
  const straight = straightDraw(setup, halfString)
  const past = draw >= straight
  if (!past && near !== undefined) {
    const solved = closeBy(problemAt(draw), near)
    if (solved !== null && Math.sign(determinant(solved.at)) === branch) return { ok: true, value: solved.unknowns }
  }
  const followed = follow(problemAt, from.unknowns, from.at, past ? straight : draw)
  if (followed.arrived && !past) return { ok: true, value: followed.unknowns }
  const inside = followed.reached - nearestMargin
  const nearest = inside > setup.braceHeight ? inside : undefined
  return past ? drawPastString(draw, straight, nearest) : limbGivesWay(draw, nearest)
}
