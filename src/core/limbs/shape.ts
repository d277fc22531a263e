import type { RecurveLimb } from "./types"

/** A limb with all lengths over its own: what its bent shape depends on. Angles in rad. */
export interface LimbShape {
  readonly recurve: number
  readonly recurveFrom: number
  readonly stiffnessTaper: number
  readonly massTaper: number
}

/**
 * The string's hold on a limb: it leaves at the fraction `contact` of the length (1: the tip), where the limb's
 * direction is `contactAngle` (rad) forward of the string's, and pulls with `load` = tension · length² / EI₀.
 */
export interface LimbHold {
  readonly contactAngle: number
  readonly contact: number
  readonly load: number
}

export const shapeOf = (limb: RecurveLimb): LimbShape => ({
  recurve: limb.recurve,
  recurveFrom: limb.recurveFrom,
  stiffnessTaper: limb.stiffnessTaper,
  massTaper: limb.massTaper,
})

/** Natural curvature of the recurved part, rad per limb length. */
export const recurveCurvature = (shape: LimbShape): number => shape.recurve / (1 - shape.recurveFrom)

/** From the root to the unstrung tip, over the limb's length: a straight part and an arc. */
export function unstrungTip(shape: LimbShape, rootAngle: number): { forward: number; out: number } {
  const { recurve, recurveFrom } = shape
  const arc = 1 - recurveFrom
  const halfTurn = recurve / 2
  const chord = halfTurn === 0 ? arc : (arc * Math.sin(halfTurn)) / halfTurn
  return {
    forward: recurveFrom * Math.sin(rootAngle) + chord * Math.sin(rootAngle + halfTurn),
    out: recurveFrom * Math.cos(rootAngle) + chord * Math.cos(rootAngle + halfTurn),
  }
}
