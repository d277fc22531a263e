import {
  addTensors,
  cross,
  dot,
  type MassProperties,
  scaleTensor,
  type Tensor,
  tensorMatrix,
  type Vec3,
} from "../solids"

/**
 * What a body on a hinge adds to the tensor about the grip at the first instant of a quick turn, kg·m², bow axes: its
 * own, less p pᵀ / J. Here p is the moment about the hinge's axis that turning the bow at a unit rate would take, and J
 * the body's own moment of inertia about that axis, so that for a turn ω the hinge runs at -p·ω / J and passes nothing
 * on. A body with no J (a point on the axis) is carried along.
 *
 * @param hinge a point of the axis, m from the grip. @param axis unit direction.
 */
export function hingedTensor(
  { mass, centre, aboutCentre, aboutOrigin }: MassProperties,
  hinge: Vec3,
  axis: Vec3,
): Tensor {
  const arm: Vec3 = [centre[0] - hinge[0], centre[1] - hinge[1], centre[2] - hinge[2]]
  const spin = times(aboutCentre, axis)
  // Swinging about the hinge moves the centre with axis × arm; a turn ω moves it with ω × centre.
  const swing = cross(axis, arm)
  const own = dot(axis, spin) + mass * dot(swing, swing)
  if (!(own > 0)) return aboutOrigin
  const carried = cross(centre, swing)
  const p: Vec3 = [spin[0] + mass * carried[0], spin[1] + mass * carried[1], spin[2] + mass * carried[2]]
  return addTensors(aboutOrigin, scaleTensor(square(p), -1 / own))
}

/** The tensor whose moment of inertia about any axis through the grip is `about` of it: a quadratic form from its values. */
export function tensorOf(about: (axis: Vec3) => number): Tensor {
  const [xx, yy, zz] = [about([1, 0, 0]), about([0, 1, 0]), about([0, 0, 1])]
  return {
    xx,
    yy,
    zz,
    xy: (about([1, 1, 0]) - xx - yy) / 2,
    xz: (about([1, 0, 1]) - xx - zz) / 2,
    yz: (about([0, 1, 1]) - yy - zz) / 2,
  }
}

const square = ([a, b, c]: Vec3): Tensor => ({ xx: a * a, yy: b * b, zz: c * c, xy: a * b, xz: a * c, yz: b * c })

function times(t: Tensor, v: Vec3): Vec3 {
  const [x, y, z] = tensorMatrix(t)
  return [dot(x, v), dot(y, v), dot(z, v)]
}
