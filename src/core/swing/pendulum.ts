import { compose, slender, tube, type Vec3 } from "../solids"

export type Joint = "hinge" | "ball"

export interface SwingWeight {
  /** Stem, slender, from the hinge: m and kg. */
  readonly stemLength: number
  readonly stemMass: number
  /** Bob, a full cylinder along the stem, centred on the stem's end: m and kg. */
  readonly bobMass: number
  readonly bobRadius: number
  readonly bobLength: number
  readonly joint: Joint
  /** Largest angle from the bow's downward direction, rad. */
  readonly stop: number
}

/** A swing weight as a physical pendulum. */
export interface Pendulum {
  readonly mass: number
  /** Hinge to centre of mass along the stem, m. 0 when it weighs nothing. */
  readonly arm: number
  /** About its own centre, across the stem, kg·m². */
  readonly acrossCentre: number
  /** About its own centre, along the stem, kg·m². */
  readonly alongCentre: number
}

const STEM: Vec3 = [1, 0, 0]

export function pendulumOf(swing: SwingWeight): Pendulum {
  const whole = compose(swingSolids(swing, [0, 0, 0], STEM))
  return {
    mass: whole.mass,
    arm: whole.centre[0],
    acrossCentre: whole.aboutCentre.zz,
    alongCentre: whole.aboutCentre.xx,
  }
}

/** Stem and bob as solids, hung from `hinge` along the unit direction `d`, bow axes. */
export function swingSolids(swing: SwingWeight, hinge: Vec3, d: Vec3) {
  const at = (distance: number): Vec3 => [
    hinge[0] + d[0] * distance,
    hinge[1] + d[1] * distance,
    hinge[2] + d[2] * distance,
  ]
  return [
    slender(swing.stemMass, hinge, at(swing.stemLength)),
    tube(swing.bobMass, at(swing.stemLength - swing.bobLength / 2), d, swing.bobLength, swing.bobRadius, 0),
  ]
}
