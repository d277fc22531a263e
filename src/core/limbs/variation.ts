import { driftShares, kickShares, stageStarts } from "./composition"
import { stepsPerPiece } from "./settings"
import { type LimbHold, type LimbShape, recurveCurvature } from "./shape"

/**
 * What a pass is differentiated by: lane 0 of every array is the value, lane i + 1 the derivative by the i-th of these.
 * `place` is where the string leaves, as in `shoot`.
 */
export const passVariables = ["place", "load", "recurveFrom", "recurve", "stiffnessTaper", "massTaper"] as const

/** Moments of mass about the contact point. */
export const momentKinds = ["p", "q", "pp", "pq", "qq"] as const

export const lanes = passVariables.length + 1
const stages = driftShares.length
const nodeLimit = 3 * stepsPerPiece + 1
const rows = (count: number) => new Float64Array(count * lanes)

const placeLane = 1 + passVariables.indexOf("place")

type Piece = "inner" | "outer" | "beyond"

/**
 * The same pass as `shoot`, which defines it, with the derivatives of everything it reads by everything that shapes it:
 * those of the integration itself, exact to rounding. Slower and general, for sensitivities only. A pass is a reusable
 * workspace: the next one overwrites its arrays.
 */
export class DifferentiatedPass {
  readonly angle = rows(1)
  readonly across = rows(1)
  readonly along = rows(1)
  /** `momentKinds` × each over mass · length (first) or mass · length² (second). */
  readonly moments = rows(momentKinds.length)
  /** Nodes root to tip × lanes; a node keeps its place on its piece's grid, not its fraction of the length. */
  readonly nodeFraction = rows(nodeLimit)
  readonly nodeAngle = rows(nodeLimit)
  readonly nodeAcross = rows(nodeLimit)
  readonly nodeAlong = rows(nodeLimit)
  firstNode = 0
  lastNode = 0

  private readonly startRate = rows(1)
  private readonly widthRate = rows(1)
  private readonly curvatureRate = rows(1)
  private readonly loadRate = rows(1)
  private readonly taperRate = rows(1)
  private readonly massRate = rows(1)
  private start = 0
  private width = 0
  private curvature = 0
  private load = 0
  private stiffnessSlope = 0
  private massSlope = 0

  run(shape: LimbShape, hold: LimbHold): void {
    this.moments.fill(0)
    this.firstNode = shape.recurveFrom > 0 ? 0 : stepsPerPiece
    this.lastNode = 2 * stepsPerPiece
    if (hold.contact < 1) {
      this.lastNode += stepsPerPiece
      this.begin(hold)
      this.piece("beyond", shape, hold)
    }
    this.begin(hold)
    this.piece("outer", shape, hold)
    this.piece("inner", shape, hold)
    this.averageMoments(shape)
  }

  private piece(piece: Piece, shape: LimbShape, hold: LimbHold): void {
    this.enter(piece, shape, hold)
    const outward = piece === "beyond"
    const direction = outward ? 1 : -1
    const anchor = piece === "inner" ? 0 : outward ? 2 * stepsPerPiece : stepsPerPiece
    for (let taken = 0; taken <= stepsPerPiece; taken += 1) {
      const passed = taken / stepsPerPiece
      const from = outward ? passed : 1 - passed
      this.record(anchor + (outward ? taken : stepsPerPiece - taken), from)
      if (taken === stepsPerPiece) break
      for (let stage = 0; stage <= stages; stage += 1) {
        const x = from + (direction * (stageStarts[stage] as number)) / stepsPerPiece
        const share = (kickShares[stage] as number) / stepsPerPiece
        this.weigh(share, x)
        this.kick(direction * share, x)
        if (stage < stages) this.drift((direction * (driftShares[stage] as number)) / stepsPerPiece)
      }
    }
  }

  private begin(hold: LimbHold): void {
    this.angle.fill(0)
    this.across.fill(0)
    this.along.fill(0)
    this.angle[0] = hold.contactAngle
    this.angle[placeLane] = hold.contact < 1 ? 0 : 1
  }

  /** Takes up a piece: its place on the limb, natural curvature, load and tapers, and how each variable changes them. */
  private enter(piece: Piece, shape: LimbShape, hold: LimbHold): void {
    const beyond = piece === "beyond"
    const span = 1 - shape.recurveFrom
    const curved = piece === "inner" ? 0 : 1
    this.start = piece === "inner" ? 0 : beyond ? hold.contact : shape.recurveFrom
    this.width = piece === "inner" ? shape.recurveFrom : (beyond ? 1 : hold.contact) - this.start
    this.curvature = curved * recurveCurvature(shape)
    this.load = beyond ? 0 : hold.load
    this.stiffnessSlope = shape.stiffnessTaper - 1
    this.massSlope = shape.massTaper - 1
    for (let lane = 1; lane < lanes; lane += 1) {
      const variable = passVariables[lane - 1]
      const from = variable === "recurveFrom" ? 1 : 0
      const contact = variable === "place" && hold.contact < 1 ? 1 : 0
      this.startRate[lane] = piece === "outer" ? from : beyond ? contact : 0
      this.widthRate[lane] = piece === "outer" ? contact - from : beyond ? -contact : from
      this.curvatureRate[lane] = (curved * (variable === "recurve" ? 1 : from * this.curvature)) / span
      this.loadRate[lane] = variable === "load" && !beyond ? 1 : 0
      this.taperRate[lane] = variable === "stiffnessTaper" ? 1 : 0
      this.massRate[lane] = variable === "massTaper" ? 1 : 0
    }
  }

  /** Turns the limb by its curvature at x (0 … 1 along the piece) over `share` of the piece. */
  private kick(share: number, x: number): void {
    const { angle, across, startRate, widthRate, curvatureRate, loadRate, taperRate } = this
    const { width, load, stiffnessSlope } = this
    const u = this.start + x * width
    const flexibility = 1 / (1 + stiffnessSlope * u)
    const p = across[0] as number
    const bend = load * p * flexibility
    const turn = this.curvature + bend
    angle[0] = (angle[0] as number) + share * width * turn
    for (let lane = 1; lane < lanes; lane += 1) {
      const widthDot = widthRate[lane] as number
      const uDot = (startRate[lane] as number) + x * widthDot
      const stiffnessDot = (taperRate[lane] as number) * u + stiffnessSlope * uDot
      const turnDot =
        (curvatureRate[lane] as number) +
        ((loadRate[lane] as number) * p + load * (across[lane] as number) - bend * stiffnessDot) * flexibility
      angle[lane] = (angle[lane] as number) + share * (widthDot * turn + width * turnDot)
    }
  }

  /** Moves along the limb's direction over `share` of the piece. */
  private drift(share: number): void {
    const { angle, across, along, width, widthRate } = this
    const sine = Math.sin(angle[0] as number)
    const cosine = Math.cos(angle[0] as number)
    across[0] = (across[0] as number) - share * width * sine
    along[0] = (along[0] as number) - share * width * cosine
    for (let lane = 1; lane < lanes; lane += 1) {
      const widthDot = widthRate[lane] as number
      const turned = width * (angle[lane] as number)
      across[lane] = (across[lane] as number) - share * (widthDot * sine + turned * cosine)
      along[lane] = (along[lane] as number) - share * (widthDot * cosine - turned * sine)
    }
  }

  /** Adds a stage's share of the moments of mass. */
  private weigh(share: number, x: number): void {
    const { across, along, moments, width, massSlope } = this
    const p = across[0] as number
    const q = along[0] as number
    const u = this.start + x * width
    const density = 1 + massSlope * u
    const mass = share * width * density
    moments[0] = (moments[0] as number) + mass * p
    moments[lanes] = (moments[lanes] as number) + mass * q
    moments[2 * lanes] = (moments[2 * lanes] as number) + mass * p * p
    moments[3 * lanes] = (moments[3 * lanes] as number) + mass * p * q
    moments[4 * lanes] = (moments[4 * lanes] as number) + mass * q * q
    for (let lane = 1; lane < lanes; lane += 1) {
      const widthDot = this.widthRate[lane] as number
      const uDot = (this.startRate[lane] as number) + x * widthDot
      const densityDot = (this.massRate[lane] as number) * u + massSlope * uDot
      const massDot = share * (widthDot * density + width * densityDot)
      const pDot = mass * (across[lane] as number)
      const qDot = mass * (along[lane] as number)
      moments[lane] = (moments[lane] as number) + massDot * p + pDot
      moments[lane + lanes] = (moments[lane + lanes] as number) + massDot * q + qDot
      moments[lane + 2 * lanes] = (moments[lane + 2 * lanes] as number) + massDot * p * p + 2 * p * pDot
      moments[lane + 3 * lanes] = (moments[lane + 3 * lanes] as number) + massDot * p * q + p * qDot + q * pDot
      moments[lane + 4 * lanes] = (moments[lane + 4 * lanes] as number) + massDot * q * q + 2 * q * qDot
    }
  }

  /** From moments of the density 1 - (1 - massTaper)·u, whose whole is (1 + massTaper)/2, to moments over the mass. */
  private averageMoments(shape: LimbShape): void {
    const { moments } = this
    const whole = (1 + shape.massTaper) / 2
    for (let row = 0; row < moments.length; row += lanes) {
      const average = (moments[row] as number) / whole
      moments[row] = average
      for (let lane = 1; lane < lanes; lane += 1) {
        const wholeDot = (this.massRate[lane] as number) / 2
        moments[row + lane] = ((moments[row + lane] as number) - average * wholeDot) / whole
      }
    }
  }

  private record(node: number, x: number): void {
    for (let lane = 0; lane < lanes; lane += 1) {
      const at = node * lanes + lane
      const rate = (this.startRate[lane] as number) + x * (this.widthRate[lane] as number)
      this.nodeFraction[at] = lane === 0 ? this.start + x * this.width : rate
      this.nodeAngle[at] = this.angle[lane] as number
      this.nodeAcross[at] = this.across[lane] as number
      this.nodeAlong[at] = this.along[lane] as number
    }
  }
}
