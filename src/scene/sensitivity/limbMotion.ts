import { type MassMoments, momentsOf, movedRates, scaleMoments, sumMoments } from "../../core/sensitivity"
import type { Solid, Tensor, Vec3 } from "../../core/solids"

/**
 * How one limb answers to a quantity, per unit of it: forward and away from the centre line, the other limb
 * mirrored. Metres and kg·m² per unit.
 */
export interface LimbMotion {
  readonly centreForward: number
  readonly centreOut: number
  /** The string's end on it. */
  readonly endForward: number
  readonly endOut: number
  /**
   * Second moments of mass of one limb about its own centre, kg·m² per unit; left out where it keeps its shape. The
   * mixed moment is not asked for: the mirrored limb cancels it.
   */
  readonly second?: { readonly forward: number; readonly out: number }
}

export const LIMBS_STILL: LimbMotion = { centreForward: 0, centreOut: 0, endForward: 0, endOut: 0 }

/** What a bow's limbs do at one draw, by slot name and for the three quantities that also move the string. */
export interface LimbMotions {
  /** By the names of the limbs' own slots that move or bend them, per file unit. */
  readonly own: Readonly<Record<string, LimbMotion>>
  /** Per metre of brace height, per metre of draw length, per whole of the draw fraction. */
  readonly braceHeight: LimbMotion
  readonly drawLength: LimbMotion
  readonly drawFraction: LimbMotion
}

/** Rates of both limbs' mass moments under a motion that also raises both by `up`. */
export function limbPairRates([upper, lower]: readonly [Solid, Solid], motion: LimbMotion, up: number): MassMoments {
  const { centreForward, centreOut } = motion
  return sumMoments(
    movedRates(momentsOf(upper), [centreForward, up + centreOut, 0]),
    movedRates(momentsOf(lower), [centreForward, up - centreOut, 0]),
    reshaping(motion),
  )
}

/** Velocities of the string's upper and lower end. */
export const endRates = ({ endForward, endOut }: LimbMotion, up: number): readonly [Vec3, Vec3] => [
  [endForward, up + endOut, 0],
  [endForward, up - endOut, 0],
]

/** Both limbs' own tensors together: what they have mixed of forward and out cancels between the mirrored two. */
function reshaping({ second }: LimbMotion): MassMoments {
  const { forward, out } = second ?? { forward: 0, out: 0 }
  const aboutOrigin: Tensor = { xx: 2 * out, yy: 2 * forward, zz: 2 * (forward + out), xy: 0, xz: 0, yz: 0 }
  return { mass: 0, first: [0, 0, 0], aboutOrigin }
}

/** Per kilogram of each limb. */
export const limbMassRates = (solids: readonly [Solid, Solid]): MassMoments =>
  sumMoments(...solids.map((solid) => scaleMoments(momentsOf(solid), 1 / solid.mass)))
