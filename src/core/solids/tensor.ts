import type { Mat3, Vec3 } from "./vector"

/**
 * A symmetric inertia tensor, kg·m², in bow axes. The off-diagonal members are the tensor's elements,
 * -∫xy dm and so on, not the products of inertia. A Tensor never says about which point: the name of the
 * variable that holds it must (`aboutCentre`, `aboutGrip`).
 */
export interface Tensor {
  readonly xx: number
  readonly yy: number
  readonly zz: number
  readonly xy: number
  readonly xz: number
  readonly yz: number
}

export const NO_TENSOR: Tensor = { xx: 0, yy: 0, zz: 0, xy: 0, xz: 0, yz: 0 }

export const addTensors = (a: Tensor, b: Tensor): Tensor => ({
  xx: a.xx + b.xx,
  yy: a.yy + b.yy,
  zz: a.zz + b.zz,
  xy: a.xy + b.xy,
  xz: a.xz + b.xz,
  yz: a.yz + b.yz,
})

export const scaleTensor = (a: Tensor, k: number): Tensor => ({
  xx: a.xx * k,
  yy: a.yy * k,
  zz: a.zz * k,
  xy: a.xy * k,
  xz: a.xz * k,
  yz: a.yz * k,
})

/** Tensor of a point mass `mass` at `r` about the origin: m(r² 1 - r rᵀ). Also the parallel-axis term. */
export function pointTensor(mass: number, r: Vec3): Tensor {
  const [x, y, z] = r
  return {
    xx: mass * (y * y + z * z),
    yy: mass * (x * x + z * z),
    zz: mass * (x * x + y * y),
    xy: -mass * x * y,
    xz: -mass * x * z,
    yz: -mass * y * z,
  }
}

/**
 * Tensor of a body symmetric about the unit direction `d`: `axial` about d, `transverse` across it.
 * R diag R^T collapses to transverse·1 + (axial - transverse)·d dᵀ, so no rotation matrix is needed.
 */
export function axisymmetricTensor(axial: number, transverse: number, d: Vec3): Tensor {
  const k = axial - transverse
  return {
    xx: transverse + k * d[0] * d[0],
    yy: transverse + k * d[1] * d[1],
    zz: transverse + k * d[2] * d[2],
    xy: k * d[0] * d[1],
    xz: k * d[0] * d[2],
    yz: k * d[1] * d[2],
  }
}

/** A symmetric tensor from the element of each row and column, 0 … 2. */
const fromElements = (element: (row: number, column: number) => number): Tensor => ({
  xx: element(0, 0),
  yy: element(1, 1),
  zz: element(2, 2),
  xy: element(0, 1),
  xz: element(0, 2),
  yz: element(1, 2),
})

/** R T Rᵀ for a rotation `r` whose columns are the body's axes seen in bow axes. */
export function rotateTensor(t: Tensor, r: Mat3): Tensor {
  const m = tensorMatrix(t)
  const element = (i: number, j: number) => {
    let sum = 0
    for (let a = 0; a < 3; a++) for (let b = 0; b < 3; b++) sum += r[i]![a]! * m[a]![b]! * r[j]![b]!
    return sum
  }
  return fromElements(element)
}

/** Rate of change of a tensor when its body turns at `w` (rad per unit): [w]T - T[w]. */
export function turnRate(t: Tensor, w: Vec3): Tensor {
  const m = tensorMatrix(t)
  const skew: Mat3 = [
    [0, -w[2], w[1]],
    [w[2], 0, -w[0]],
    [-w[1], w[0], 0],
  ]
  const element = (i: number, j: number) => {
    let sum = 0
    for (let a = 0; a < 3; a++) sum += skew[i]![a]! * m[a]![j]! + m[i]![a]! * skew[j]![a]!
    return sum
  }
  return fromElements(element)
}

export const tensorMatrix = (t: Tensor): Mat3 => [
  [t.xx, t.xy, t.xz],
  [t.xy, t.yy, t.yz],
  [t.xz, t.yz, t.zz],
]

/** uᵀ T u: the moment of inertia about the unit axis `u` through the tensor's own point. */
export const aboutAxis = (t: Tensor, u: Vec3): number =>
  t.xx * u[0] * u[0] +
  t.yy * u[1] * u[1] +
  t.zz * u[2] * u[2] +
  2 * (t.xy * u[0] * u[1] + t.xz * u[0] * u[2] + t.yz * u[1] * u[2])
