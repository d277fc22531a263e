import { cross, dot, type Mat3, scale } from "../solids"

/** A determinant this small beside the product of the rows' lengths is none: rounding alone makes as much. */
const SINGULAR = 1e-12

/** The inverse of a 3 × 3 matrix; null where it has none. */
export function inverse([a, b, c]: Mat3): Mat3 | null {
  const [bc, ca, ab] = [cross(b, c), cross(c, a), cross(a, b)]
  const determinant = dot(a, bc)
  const size = Math.hypot(...a) * Math.hypot(...b) * Math.hypot(...c)
  if (!(Math.abs(determinant) > SINGULAR * size)) return null
  const [x, y, z] = [scale(bc, 1 / determinant), scale(ca, 1 / determinant), scale(ab, 1 / determinant)]
  return [
    [x[0], y[0], z[0]],
    [x[1], y[1], z[1]],
    [x[2], y[2], z[2]],
  ]
}
