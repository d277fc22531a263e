import type { Solid } from "./solid"
import type { Tensor } from "./tensor"
import { type Vec3, ZERO } from "./vector"

/** Many solids as one: total mass, centre of mass, and the tensor about the centre and about the origin (the grip). */
export interface MassProperties {
  readonly mass: number
  readonly centre: Vec3
  readonly aboutCentre: Tensor
  readonly aboutOrigin: Tensor
}

/**
 * Sum of solids by the parallel-axis theorem. Masses may be zero; with no mass at all the centre is
 * the origin by decision, since there is none, and both tensors are zero.
 *
 * The tensor about the centre is summed from distances to the centre in a second pass, not by
 * subtracting M·c² from the one about the origin: that difference loses digits when the centre is far away.
 */
export function compose(solids: readonly Solid[]): MassProperties {
  let mass = 0
  let x = 0
  let y = 0
  let z = 0
  for (const solid of solids) {
    mass += solid.mass
    x += solid.mass * solid.centre[0]
    y += solid.mass * solid.centre[1]
    z += solid.mass * solid.centre[2]
  }
  const centre: Vec3 = mass > 0 ? [x / mass, y / mass, z / mass] : ZERO
  return { mass, centre, aboutCentre: tensorAbout(solids, centre), aboutOrigin: tensorAbout(solids, ZERO) }
}

/** Tensor of the solids about `point`, bow axes. */
export function tensorAbout(solids: readonly Solid[], point: Vec3): Tensor {
  let xx = 0
  let yy = 0
  let zz = 0
  let xy = 0
  let xz = 0
  let yz = 0
  for (const { mass, centre, aboutCentre } of solids) {
    const x = centre[0] - point[0]
    const y = centre[1] - point[1]
    const z = centre[2] - point[2]
    xx += aboutCentre.xx + mass * (y * y + z * z)
    yy += aboutCentre.yy + mass * (x * x + z * z)
    zz += aboutCentre.zz + mass * (x * x + y * y)
    xy += aboutCentre.xy - mass * x * y
    xz += aboutCentre.xz - mass * x * z
    yz += aboutCentre.yz - mass * y * z
  }
  return { xx, yy, zz, xy, xz, yz }
}
