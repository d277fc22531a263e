import { type Answer, rateOf } from "./implicit"
import type { ParameterRates } from "./parameters"
import type { LimbHold } from "./shape"
import type { LimbSetup, LimbState, PlanePoint, SecondMoments } from "./types"
import { type DifferentiatedPass, lanes } from "./variation"

/** How one state changes with one parameter, the others and the nock still: every figure per unit of the parameter. */
export interface LimbRates {
  /** m, the same at every draw. */
  readonly halfString: number
  readonly drawForce: number
  readonly stringTension: number
  readonly stringAngle: number
  readonly tip: PlanePoint
  readonly tipAngle: number
  /** Where the string leaves the limb. */
  readonly contact: PlanePoint
  readonly centre: PlanePoint
  readonly secondMoments: SecondMoments
  /** Of the state's nodes, which keep their place on their piece's grid: their `fraction` moves with `recurveFrom`. */
  nodes(): NodeRate[]
}

export interface NodeRate extends PlanePoint {
  readonly angle: number
}

/** A solved state with its differentiated pass. */
export interface Differentiated {
  readonly state: LimbState
  readonly hold: LimbHold
  readonly pass: DifferentiatedPass
}

const entry = (array: Float64Array, row: number): number => array[row * lanes] as number

/** Rate over value of load · sin(string angle), to which the draw force is proportional. The string must not be straight in. */
export const logarithmicForceRate = ({ state, hold }: Differentiated, { laneRates, stringAngle }: Answer): number =>
  laneRates[1] / hold.load + stringAngle / Math.tan(state.stringAngle)

/**
 * The rates of a state, from how its pass's variables and its string answer. `scaling` is the rate over value of what
 * turns load into tension besides the load itself.
 */
export function ratesOf(
  { limb }: LimbSetup,
  { state, hold, pass }: Differentiated,
  answer: Answer,
  rates: ParameterRates,
  scaling: number,
): Omit<LimbRates, "halfString"> {
  const { laneRates } = answer
  const cosine = Math.cos(state.stringAngle)
  const sine = Math.sin(state.stringAngle)
  const acrossRate = rateOf(pass.across, 0, laneRates)
  const alongRate = rateOf(pass.along, 0, laneRates)

  /** Of the place from which (across, along) leads to the contact point, when those change at the rates given. */
  const placeRate = (across: number, along: number, itsAcross: number, itsAlong: number): PlanePoint => {
    const p = entry(pass.across, 0) - across
    const q = entry(pass.along, 0) - along
    const pRate = limb.length * (acrossRate - itsAcross) + rates.length * p
    const qRate = limb.length * (alongRate - itsAlong) + rates.length * q
    const turn = limb.length * answer.stringAngle
    return {
      forward: rates.rootForward + pRate * cosine + qRate * sine + turn * (q * cosine - p * sine),
      out: rates.rootOut - pRate * sine + qRate * cosine - turn * (p * cosine + q * sine),
    }
  }

  const nodeRate = (node: number): NodeRate => {
    const itsAcross = rateOf(pass.nodeAcross, node, laneRates)
    const itsAlong = rateOf(pass.nodeAlong, node, laneRates)
    const place = placeRate(entry(pass.nodeAcross, node), entry(pass.nodeAlong, node), itsAcross, itsAlong)
    return { ...place, angle: rateOf(pass.nodeAngle, node, laneRates) + answer.stringAngle }
  }
  const tip = nodeRate(pass.lastNode)
  const tension = state.stringTension * (laneRates[1] / hold.load + scaling)
  const centre = placeRate(
    entry(pass.moments, 0),
    entry(pass.moments, 1),
    rateOf(pass.moments, 0, laneRates),
    rateOf(pass.moments, 1, laneRates),
  )
  return {
    drawForce: 2 * (tension * sine + state.stringTension * cosine * answer.stringAngle),
    stringTension: tension,
    stringAngle: answer.stringAngle,
    tip: { forward: tip.forward, out: tip.out },
    tipAngle: tip.angle,
    contact: placeRate(0, 0, 0, 0),
    centre,
    secondMoments: secondMomentRates(limb.length, rates.length, state, answer, pass),
    nodes: () => Array.from({ length: pass.lastNode - pass.firstNode + 1 }, (_, i) => nodeRate(pass.firstNode + i)),
  }
}

/** Growth of the moments in the string's frame, turned into the bow's, with their growth in size and their turning. */
function secondMomentRates(
  length: number,
  lengthRate: number,
  state: LimbState,
  { laneRates, stringAngle }: Answer,
  pass: DifferentiatedPass,
): SecondMoments {
  const value = (kind: number) => entry(pass.moments, kind)
  const rate = (kind: number) => rateOf(pass.moments, kind, laneRates)
  const pp = length ** 2 * (rate(2) - 2 * value(0) * rate(0))
  const pq = length ** 2 * (rate(3) - value(0) * rate(1) - value(1) * rate(0))
  const qq = length ** 2 * (rate(4) - 2 * value(1) * rate(1))
  const cosine = Math.cos(state.stringAngle)
  const sine = Math.sin(state.stringAngle)
  const growth = (2 * lengthRate) / length
  const { forwardForward, forwardOut, outOut } = state.secondMoments
  return {
    forwardForward:
      cosine ** 2 * pp +
      2 * cosine * sine * pq +
      sine ** 2 * qq +
      growth * forwardForward +
      2 * stringAngle * forwardOut,
    forwardOut:
      cosine * sine * (qq - pp) +
      (cosine ** 2 - sine ** 2) * pq +
      growth * forwardOut +
      stringAngle * (outOut - forwardForward),
    outOut: sine ** 2 * pp - 2 * cosine * sine * pq + cosine ** 2 * qq + growth * outOut - 2 * stringAngle * forwardOut,
  }
}
