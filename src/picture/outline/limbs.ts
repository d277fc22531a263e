import { along, scale, subtract, unit, type Vec3 } from "../../core/solids"
import type { LimbPlace } from "../../scene/limbPlace"
import type { Bow } from "../../scene/schema"
import { riserEnds } from "./riser"

/** Width (along z) and thickness (across the limb's line, in the x-y plane) at the fraction u of its length, m. */
export type StripSize = (u: number) => { readonly width: number; readonly thickness: number }

/** The part of a limb inside its pocket, m; drawn only. */
const BUTT = 0.045

/** Width and thickness of a recurve limb as drawn; the file gives its mass and stiffness, not these. m. */
export const recurveStrip: StripSize = (u) => ({
  width: u < 0.9 ? 0.044 - 0.02 * u : Math.max(0.011, 0.026 - 0.15 * (u - 0.9)),
  thickness: 0.0075 - 0.0035 * u,
})

/** One of a compound limb's two strips. */
export const splitStrip: StripSize = () => ({ width: 0.014, thickness: 0.011 })

/** A solved limb with its butt added inward of the root. */
export function withButt(curve: readonly Vec3[]): Vec3[] {
  const [root, next] = [curve[0]!, curve[1]!]
  return [along(root, unit(subtract(next, root)), -BUTT), ...curve]
}

export interface CompoundLimb {
  readonly curve: readonly Vec3[]
  readonly cam: Vec3
  readonly camRadius: number
}

const CURVE_POINTS = 13

/**
 * A compound's limb and round cam as drawn, `side` +1 upper, -1 lower. Only the limb's centre and the string's end
 * are the file's: the cam touches the string's end from the front and moves with the limb's centre; the limb runs from the
 * pocket, bowed outward, to the cam.
 */
export function compoundLimb(bow: Bow, limbs: LimbPlace, side: 1 | -1): CompoundLimb {
  const ends = riserEnds(bow)
  const pocket: Vec3 = [ends.forward - 0.004, side > 0 ? ends.upper : ends.lower, 0]
  const end = limbs.stringEnds[side > 0 ? 0 : 1]
  const centre = limbs.solids[side > 0 ? 0 : 1].centre
  const camRadius = 0.035
  const shift = bow.kind === "compound" ? bow.limbs.drawnShiftMm[0] * 1e-3 * limbs.drawFraction : 0
  const cam: Vec3 = [end[0] + camRadius + shift, end[1], 0]
  // The control point lies outward of both ends, so that the limb leaves its pocket steeply and reaches the cam flat.
  const bend: Vec3 = [pocket[0] + 0.3 * (centre[0] - pocket[0]), end[1] + side * 0.025, 0]
  const curve = Array.from({ length: CURVE_POINTS }, (_, index) => {
    const u = index / (CURVE_POINTS - 1)
    const [a, b, c] = [scale(pocket, (1 - u) ** 2), scale(bend, 2 * u * (1 - u)), scale(cam, u * u)]
    return [a[0] + b[0] + c[0], a[1] + b[1] + c[1], 0] as Vec3
  })
  return { curve, cam, camRadius }
}
