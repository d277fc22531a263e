import { driftShares, kickShares, stageStarts } from "./composition"
import { stepsPerPiece } from "./settings"
import { type LimbHold, type LimbShape, recurveCurvature } from "./shape"

/** What one pass along a limb reads, in the string's frame, lengths over the limb's. */
export interface Reading {
  /** At the root: the limb's direction forward of the string's (rad), and the way from there to where the string leaves. */
  readonly angle: number
  readonly across: number
  readonly along: number
  /** Derivatives by the place where the string leaves: by the contact's fraction, or at the tip by the angle there. */
  readonly angleByPlace: number
  readonly acrossByPlace: number
  readonly alongByPlace: number
  readonly angleByLoad: number
  readonly acrossByLoad: number
  readonly alongByLoad: number
  /** First and second moments of mass of (p, q), over the limb's mass. */
  readonly momentP: number
  readonly momentQ: number
  readonly momentPP: number
  readonly momentPQ: number
  readonly momentQQ: number
  /** ∫ load²·p²/e du, twice the bending energy over EI₀/length. */
  readonly bending: number
}

/** Places along the limb in the last pass with `stepsPerPiece` steps, root to tip; overwritten by the next. */
export const trace = {
  first: 0,
  last: 0,
  fraction: new Float64Array(3 * stepsPerPiece + 1),
  angle: new Float64Array(3 * stepsPerPiece + 1),
  across: new Float64Array(3 * stepsPerPiece + 1),
  along: new Float64Array(3 * stepsPerPiece + 1),
}

const stages = driftShares.length

/**
 * One pass along the limb in the string's frame, from where the string leaves it to the root.
 *
 * θ is the limb's direction forward of the string's; (p, q) runs from the current place to where the string leaves, p
 * across the string (forward), q along it (outward). With u the fraction of the length,
 *
 *     dθ/du = κ₀(u) + load·p/e(u),   dp/du = -sin θ,   dq/du = -cos θ,   e(u) = 1 - (1 - stiffnessTaper)·u
 *
 * which is dα/ds = κ₀ - M/EI, M = (contact - here) × F, for a force F along the string. Only the angle changes in the
 * first equation and only the place in the others, so the integration alternates exact changes of each. Each piece of
 * the limb is mapped onto its own grid, so the jump of the natural curvature is always on a node and the reading is a
 * smooth function of every variable; the derivatives are those of the integration itself, exact to rounding.
 *
 * A limb under the string (contact below 1) keeps its natural shape there; it is read only when `whole`, for its mass
 * and its trace. One plain loop over plain numbers: it runs a hundred times before a fresh program has compiled it.
 */
export function shoot(shape: LimbShape, hold: LimbHold, whole: boolean, steps: number): Reading {
  const covered = hold.contact < 1
  const stiffnessSlope = shape.stiffnessTaper - 1
  const massSlope = shape.massTaper - 1
  let angle = 0
  let across = 0
  let along = 0
  let angleByPlace = 0
  let acrossByPlace = 0
  let alongByPlace = 0
  let angleByLoad = 0
  let acrossByLoad = 0
  let alongByLoad = 0
  let momentP = 0
  let momentQ = 0
  let momentPP = 0
  let momentPQ = 0
  let momentQQ = 0
  let bending = 0
  trace.first = shape.recurveFrom > 0 ? 0 : steps
  trace.last = covered ? 3 * steps : 2 * steps
  for (let piece = covered && whole ? 2 : 1; piece >= 0; piece -= 1) {
    const beyond = piece === 2
    const start = beyond ? hold.contact : piece === 1 ? shape.recurveFrom : 0
    const width = beyond ? 1 - start : piece === 1 ? hold.contact - start : shape.recurveFrom
    const widthDot = piece === 1 && covered ? 1 : 0
    const curvature = piece === 0 ? 0 : recurveCurvature(shape)
    const load = beyond ? 0 : hold.load
    const step = beyond ? 1 / steps : -1 / steps
    if (piece > 0) {
      angle = hold.contactAngle
      across = 0
      along = 0
      angleByPlace = covered ? 0 : 1
    }
    for (let taken = 0; taken <= steps; taken += 1) {
      const node = piece * steps + (beyond ? taken : steps - taken)
      const from = beyond ? taken / steps : 1 - taken / steps
      trace.fraction[node] = start + from * width
      trace.angle[node] = angle
      trace.across[node] = across
      trace.along[node] = along
      if (taken === steps) break
      for (let stage = 0; stage <= stages; stage += 1) {
        const x = from + (stageStarts[stage] as number) * step
        const u = start + x * width
        const kick = (kickShares[stage] as number) * step
        const turned = kick * width
        const flexibility = 1 / (1 + stiffnessSlope * u)
        const bend = load * across * flexibility
        const mass = Math.abs(width * step) * (kickShares[stage] as number) * (1 + massSlope * u)
        momentP += mass * across
        momentQ += mass * along
        momentPP += mass * across * across
        momentPQ += mass * across * along
        momentQQ += mass * along * along
        bending -= turned * load * across * bend
        angle += turned * (curvature + bend)
        angleByPlace +=
          kick * widthDot * (curvature + bend) +
          turned * flexibility * (load * acrossByPlace - bend * stiffnessSlope * x * widthDot)
        angleByLoad += turned * flexibility * (across + load * acrossByLoad)
        if (stage === stages) break
        const drift = (driftShares[stage] as number) * step
        const moved = drift * width
        const sine = Math.sin(angle)
        const cosine = Math.cos(angle)
        across -= moved * sine
        along -= moved * cosine
        acrossByPlace -= drift * widthDot * sine + moved * cosine * angleByPlace
        alongByPlace -= drift * widthDot * cosine - moved * sine * angleByPlace
        acrossByLoad -= moved * cosine * angleByLoad
        alongByLoad += moved * sine * angleByLoad
      }
    }
    if (beyond) {
      acrossByPlace = 0
      alongByPlace = 0
      angleByLoad = 0
      acrossByLoad = 0
      alongByLoad = 0
    }
  }
  const mass = (1 + shape.massTaper) / 2
  return {
    angle,
    across,
    along,
    angleByPlace,
    acrossByPlace,
    alongByPlace,
    angleByLoad,
    acrossByLoad,
    alongByLoad,
    momentP: momentP / mass,
    momentQ: momentQ / mass,
    momentPP: momentPP / mass,
    momentPQ: momentPQ / mass,
    momentQQ: momentQQ / mass,
    bending,
  }
}
