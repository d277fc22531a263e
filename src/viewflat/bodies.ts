import { along, cross, type Vec3, unit } from "../core/solids"

/** Points of a circle; enough that its outline looks round at the size of a disc. */
const ROUND = 14

/** A circle of this radius (m) about a point, square to the unit vector `d`. */
export function ring(centre: Vec3, d: Vec3, radius: number): Vec3[] {
  const aside: Vec3 = Math.abs(d[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0]
  const u = unit(cross(d, aside))
  const v = cross(d, u)
  return Array.from({ length: ROUND }, (_, index) => {
    const angle = (index / ROUND) * 2 * Math.PI
    return along(along(centre, u, radius * Math.cos(angle)), v, radius * Math.sin(angle))
  })
}

/** Both end circles of a cylinder: their convex outline is the cylinder's, from wherever it is seen. */
export const cylinder = (start: Vec3, d: Vec3, length: number, radius: number): Vec3[] => [
  ...ring(start, d, radius),
  ...ring(along(start, d, length), d, radius),
]

/** The corners of a box along the bow's axes. */
export function corners(centre: Vec3, size: Vec3): Vec3[] {
  const signs = [-0.5, 0.5]
  return signs.flatMap((x) =>
    signs.flatMap((y) =>
      signs.map((z): Vec3 => [centre[0] + x * size[0], centre[1] + y * size[1], centre[2] + z * size[2]]),
    ),
  )
}
