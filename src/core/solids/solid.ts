import { axisymmetricTensor, NO_TENSOR, type Tensor } from "./tensor"
import { along, distance, midpoint, unit, type Vec3 } from "./vector"

/** A body with mass: kg, metres, and its tensor about its own centre, all in bow axes. */
export interface Solid {
  readonly mass: number
  readonly centre: Vec3
  readonly aboutCentre: Tensor
}

/** All mass in one place. */
export const pointSolid = (mass: number, centre: Vec3): Solid => ({ mass, centre, aboutCentre: NO_TENSOR })

/** Solid box, edges `size` along the bow axes: m(b² + c²)/12 (OpenStax University Physics vol. 1, ch. 10.5). */
export function box(mass: number, centre: Vec3, size: Vec3): Solid {
  const [a, b, c] = size
  const k = mass / 12
  return {
    mass,
    centre,
    aboutCentre: { xx: k * (b * b + c * c), yy: k * (a * a + c * c), zz: k * (a * a + b * b), xy: 0, xz: 0, yz: 0 },
  }
}

/**
 * Straight tube from `start`, `length` along the unit direction `d`; radii in metres, inner 0 for a full cylinder.
 * Axial m(ro² + ri²)/2, transverse m(3(ro² + ri²) + L²)/12 (OpenStax University Physics vol. 1, ch. 10.5).
 * Length 0 gives a disc; mass 0 is allowed and weighs nothing.
 */
export function tube(mass: number, start: Vec3, d: Vec3, length: number, outer: number, inner: number): Solid {
  const radii = outer * outer + inner * inner
  return {
    mass,
    centre: along(start, d, length / 2),
    aboutCentre: axisymmetricTensor((mass * radii) / 2, (mass * (3 * radii + length * length)) / 12, d),
  }
}

/** Slender straight rod between two points, m L²/12 across it. Coinciding ends make it a point mass. */
export function slender(mass: number, from: Vec3, to: Vec3): Solid {
  const length = distance(from, to)
  if (length === 0) return pointSolid(mass, from)
  const d = unit([to[0] - from[0], to[1] - from[1], to[2] - from[2]])
  return { ...tube(mass, from, d, length, 0, 0), centre: midpoint(from, to) }
}

/** Body known by its radii of gyration [roll, yaw, pitch], metres, about its own centre and bow axes. */
export function gyrating(mass: number, centre: Vec3, radii: Vec3): Solid {
  const [roll, yaw, pitch] = radii
  return {
    mass,
    centre,
    aboutCentre: { xx: mass * roll * roll, yy: mass * yaw * yaw, zz: mass * pitch * pitch, xy: 0, xz: 0, yz: 0 },
  }
}

/**
 * Whether any body can have these three radii of gyration: no squared radius may exceed the sum of the other two.
 * The slack is float64 rounding, so that a flat plate, which meets the rule exactly, is allowed.
 */
export function gyrationPossible(radii: Vec3): boolean {
  const [a, b, c] = [radii[0] ** 2, radii[1] ** 2, radii[2] ** 2]
  const slack = 1 + 1e-12
  return a <= (b + c) * slack && b <= (a + c) * slack && c <= (a + b) * slack
}
