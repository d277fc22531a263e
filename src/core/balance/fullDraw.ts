import { GRAVITY } from "../constants"

export interface DrawnHold {
  /** Force of the fingers on the string, N. */
  readonly holdForce: number
  /** Nock above the grip pivot, m. */
  readonly nockHeight: number
  /** Grip pivot to nock, m. */
  readonly drawLength: number
  /** The draw elbow above the arrow line, rad. */
  readonly elbowElevation: number
  /** Bow with arrow, kg. */
  readonly mass: number
  /** Gravity's nose-down moment about the grip at full draw, N·m. */
  readonly noseDown: number
}

export interface DrawnBalance {
  /** Nose-up moment of the line of pull about the grip, N·m. */
  readonly lift: number
  /** lift - noseDown: positive raises the front. */
  readonly netLift: number
  /** How far forward the balance point would have to be for a net of zero, m. */
  readonly balancedForward: number
  /** How far the hand's pressure point moves to hold the net, m; NaN without a holding force. */
  readonly gripShift: number
}

/**
 * The balance at full draw about the grip. The fingers pull back along a line tilted up by the elbow's
 * elevation ε: with h the nock's height and L the draw, lift = F(h cos ε - L sin ε). It does not depend on slope.
 */
export function drawnBalance(hold: DrawnHold): DrawnBalance {
  const { holdForce, nockHeight, drawLength, elbowElevation, mass, noseDown } = hold
  const lift = holdForce * (nockHeight * Math.cos(elbowElevation) - drawLength * Math.sin(elbowElevation))
  const netLift = lift - noseDown
  return { lift, netLift, balancedForward: lift / (mass * GRAVITY), gripShift: netLift / holdForce }
}
