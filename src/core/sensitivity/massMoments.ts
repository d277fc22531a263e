import {
  addTensors,
  NO_TENSOR,
  pointTensor,
  type Solid,
  scale,
  scaleTensor,
  type Tensor,
  type Vec3,
  ZERO,
} from "../solids"

/**
 * Mass, first moment Σ m·r and inertia tensor of something, all about the origin (the grip), bow axes, SI. All
 * three simply add up, so the same shape also holds how fast they change per unit of some quantity: their rates.
 */
export interface MassMoments {
  /** kg (a rate: kg per unit). */
  readonly mass: number
  /** kg·m. */
  readonly first: Vec3
  /** kg·m². */
  readonly aboutOrigin: Tensor
}

export const NO_MOMENTS: MassMoments = { mass: 0, first: ZERO, aboutOrigin: NO_TENSOR }

/** Mass moments of one solid about the origin, by the parallel-axis theorem. */
export const momentsOf = ({ mass, centre, aboutCentre }: Solid): MassMoments => ({
  mass,
  first: scale(centre, mass),
  aboutOrigin: addTensors(aboutCentre, pointTensor(mass, centre)),
})

/** Sum of any number of bodies or rates; none give zero. */
export function sumMoments(...terms: readonly MassMoments[]): MassMoments {
  let mass = 0
  let [x, y, z] = [0, 0, 0]
  let [xx, yy, zz, xy, xz, yz] = [0, 0, 0, 0, 0, 0]
  for (const { mass: m, first, aboutOrigin: t } of terms) {
    mass += m
    x += first[0]
    y += first[1]
    z += first[2]
    xx += t.xx
    yy += t.yy
    zz += t.zz
    xy += t.xy
    xz += t.xz
    yz += t.yz
  }
  return { mass, first: [x, y, z], aboutOrigin: { xx, yy, zz, xy, xz, yz } }
}

/** k times a body or a rate; turns "per metre" into "per millimetre". */
export const scaleMoments = (a: MassMoments, k: number): MassMoments => ({
  mass: a.mass * k,
  first: scale(a.first, k),
  aboutOrigin: scaleTensor(a.aboutOrigin, k),
})
