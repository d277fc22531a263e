import type { Vec3 } from "../../core/solids"

/**
 * Semi-axes, m, of the uniform solid ellipsoid that has this mass (kg) and these principal moments (kg·m²) about
 * its centre, along the same axes. From I₁ = m(b² + c²)/5 and its turns (OpenStax University Physics vol. 1,
 * ch. 10.5, gives the sphere's 2mR²/5 as their special case): a² = 5(I₂ + I₃ - I₁)/(2m).
 *
 * A body thin as a rod gives a negative square by rounding only; it is taken as 0. No mass: no ellipsoid, zeros.
 */
export function ellipsoidAxes(mass: number, moments: Vec3): Vec3 {
  if (!(mass > 0)) return [0, 0, 0]
  const [a, b, c] = moments
  const axis = (square: number) => Math.sqrt(Math.max(0, (5 * square) / (2 * mass)))
  return [axis(b + c - a), axis(a + c - b), axis(a + b - c)]
}
