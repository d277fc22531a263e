import { changeFor, type Closing, closingError, closingOf, holdOf, type Problem, type Unknowns } from "./equilibrium"
import { acceptedResidual, stepsPerPiece } from "./settings"
import { type Reading, shoot, trace } from "./shoot"
import type { LimbNode, LimbSetup, LimbState, PlanePoint, SecondMoments } from "./types"

/** A solved limb in the bow's frame; null when it does not close. `rootStiffness` is EI₀, N·m². */
export function describeState(
  setup: LimbSetup,
  problem: Problem,
  unknowns: Unknowns,
  draw: number,
  rootStiffness: number,
): LimbState | null {
  const { limb } = setup
  const hold = holdOf(problem.shape, unknowns, problem.wraps)
  const reading = shoot(problem.shape, hold, true, stepsPerPiece)
  const at = closingOf(reading, hold, problem)
  if (!(closingError(at) < acceptedResidual)) return null
  const place = placing(setup, reading, at.stringAngle)
  const nodes = nodesOf(place, at.stringAngle)
  const tip = nodes[nodes.length - 1] as LimbNode
  const tension = (hold.load * rootStiffness) / limb.length ** 2
  return {
    draw,
    stringTension: tension,
    drawForce: 2 * tension * Math.sin(at.stringAngle),
    drawForceRate: forceRate(setup, at, hold.load, rootStiffness),
    stringAngle: at.stringAngle,
    tip: { forward: tip.forward, out: tip.out },
    tipAngle: tip.angle,
    contact: place(0, 0),
    wrappedLength: (1 - hold.contact) * limb.length,
    nodes,
    centre: place(reading.momentP, reading.momentQ),
    secondMoments: secondMomentsOf(reading, at.stringAngle, limb.length),
    bendingEnergy: (reading.bending * rootStiffness) / (2 * limb.length),
    unknowns,
  }
}

type Placing = (across: number, along: number) => PlanePoint

/** From the way to the contact point, in the string's frame over the limb's length, to the place in the bow's frame, m. */
function placing({ limb }: LimbSetup, reading: Reading, stringAngle: number): Placing {
  const cosine = Math.cos(stringAngle)
  const sine = Math.sin(stringAngle)
  return (across, along) => {
    const p = (reading.across - across) * limb.length
    const q = (reading.along - along) * limb.length
    return { forward: limb.rootForward + p * cosine + q * sine, out: limb.rootOut - p * sine + q * cosine }
  }
}

function nodesOf(place: Placing, stringAngle: number): LimbNode[] {
  const nodes: LimbNode[] = []
  for (let node = trace.first; node <= trace.last; node += 1) {
    const point = place(trace.across[node] as number, trace.along[node] as number)
    nodes.push({
      fraction: trace.fraction[node] as number,
      forward: point.forward,
      out: point.out,
      angle: (trace.angle[node] as number) + stringAngle,
    })
  }
  return nodes
}

/** About the limb's own centre, over its mass, turned from the string's frame into the bow's. */
function secondMomentsOf(reading: Reading, stringAngle: number, length: number): SecondMoments {
  const pp = reading.momentPP - reading.momentP ** 2
  const pq = reading.momentPQ - reading.momentP * reading.momentQ
  const qq = reading.momentQQ - reading.momentQ ** 2
  const cosine = Math.cos(stringAngle)
  const sine = Math.sin(stringAngle)
  const area = length ** 2
  return {
    forwardForward: area * (cosine ** 2 * pp + 2 * cosine * sine * pq + sine ** 2 * qq),
    forwardOut: area * (cosine * sine * (qq - pp) + (cosine ** 2 - sine ** 2) * pq),
    outOut: area * (sine ** 2 * pp - 2 * cosine * sine * pq + cosine ** 2 * qq),
  }
}

/** Slope of the draw curve, N/m, by the implicit function theorem on the drawn limb's closing. */
function forceRate({ limb }: LimbSetup, at: Closing, load: number, rootStiffness: number): number {
  const cosine = Math.cos(at.stringAngle)
  const sine = Math.sin(at.stringAngle)
  const change = changeFor(at, -cosine / limb.length, -sine / limb.length)
  const turn = at.stringAngleByLift * change.lift + at.stringAngleByLoad * change.load
  return ((2 * rootStiffness) / limb.length ** 2) * (change.load * sine + load * cosine * turn)
}
