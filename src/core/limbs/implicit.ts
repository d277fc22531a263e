import type { ParameterRates } from "./parameters"
import type { LimbHold } from "./shape"
import type { LimbSetup } from "./types"
import { type DifferentiatedPass, lanes } from "./variation"

/** Rates of the pass's variables, in its lanes' order from lane 1: place, load and the shape's four numbers. */
export type LaneRates = readonly [number, number, number, number, number, number]

/** How a solved limb answers: rates of its pass's variables and of the string's angle. */
export interface Answer {
  readonly laneRates: LaneRates
  readonly stringAngle: number
}

const entry = (array: Float64Array, index: number): number => array[index] as number

/** Rate of a row of lanes when their variables change at `rates`. */
export function rateOf(array: Float64Array, row: number, rates: LaneRates): number {
  let sum = 0
  for (let lane = 1; lane < lanes; lane += 1) sum += entry(array, row * lanes + lane) * (rates[lane - 1] as number)
  return sum
}

const shapeRates = (rates: ParameterRates, place: number, load: number): LaneRates => [
  place,
  load,
  rates.recurveFrom,
  rates.recurve,
  rates.stiffnessTaper,
  rates.massTaper,
]

/** Solves [a b; c d]·(x, y) = (e, f). */
function solvePair(a: number, b: number, c: number, d: number, e: number, f: number): [number, number] {
  const determinant = a * d - b * c
  return [(e * d - b * f) / determinant, (a * f - e * c) / determinant]
}

/** Rate of a length over the limb's, when both change. */
const ratio = (length: number, rate: number, setup: LimbSetup, rates: ParameterRates): number =>
  (rate - (length * rates.length) / setup.limb.length) / setup.limb.length

/**
 * The limb at rest: the implicit function theorem on angle = root angle and across = the brace height's place. Returns
 * the rate of the half string over the limb's length. `pass` must have run at brace.
 */
export function halfStringRate(
  setup: LimbSetup,
  pass: DifferentiatedPass,
  hold: LimbHold,
  rates: ParameterRates,
): number {
  const { limb, braceHeight } = setup
  const still = shapeRates(rates, 0, 0)
  const forwardRate = ratio(-braceHeight - limb.rootForward, -rates.braceHeight - rates.rootForward, setup, rates)
  const [place, load] = solvePair(
    entry(pass.angle, 1),
    entry(pass.angle, 2),
    entry(pass.across, 1),
    entry(pass.across, 2),
    rates.rootAngle - rateOf(pass.angle, 0, still),
    forwardRate - rateOf(pass.across, 0, still),
  )
  const uncovered = hold.contact < 1 ? place : 0
  const out = ratio(limb.rootOut, rates.rootOut, setup, rates)
  return out + rateOf(pass.along, 0, shapeRates(rates, place, load)) - uncovered
}

/** The drawn limb: the same theorem on its closing. `pass` must have run at this state. */
export function answerWhenDrawn(
  setup: LimbSetup,
  pass: DifferentiatedPass,
  hold: LimbHold,
  draw: number,
  stringAngle: number,
  halfString: number,
  rates: ParameterRates,
): Answer {
  const { limb } = setup
  const cosine = Math.cos(stringAngle)
  const sine = Math.sin(stringAngle)
  const back = (draw + limb.rootForward) / limb.length
  const inward = limb.rootOut / limb.length
  const backRate = ratio(draw + limb.rootForward, rates.draw + rates.rootForward, setup, rates)
  const inwardRate = ratio(limb.rootOut, rates.rootOut, setup, rates)
  const rootAcross = back * cosine - inward * sine
  const rootAlong = back * sine + inward * cosine
  const still = shapeRates(rates, 0, 0)
  const turnWhenStill = rates.rootAngle - rateOf(pass.angle, 0, still)
  const firstWhenStill =
    backRate * cosine - inwardRate * sine - rootAlong * turnWhenStill + rateOf(pass.across, 0, still)
  const secondWhenStill =
    backRate * sine + inwardRate * cosine + rootAcross * turnWhenStill + rateOf(pass.along, 0, still) - halfString
  const [place, load] = solvePair(
    rootAlong * entry(pass.angle, 1) + entry(pass.across, 1),
    rootAlong * entry(pass.angle, 2) + entry(pass.across, 2),
    -rootAcross * entry(pass.angle, 1) + entry(pass.along, 1) - (hold.contact < 1 ? 1 : 0),
    -rootAcross * entry(pass.angle, 2) + entry(pass.along, 2),
    -firstWhenStill,
    -secondWhenStill,
  )
  const laneRates = shapeRates(rates, place, load)
  return { laneRates, stringAngle: rates.rootAngle - rateOf(pass.angle, 0, laneRates) }
}
