import type { Tensor } from "./tensor"
import { tensorMatrix } from "./tensor"
import { cross, type Mat3, type Vec3 } from "./vector"

export interface Principal {
  /** kg·m², ascending. */
  readonly moments: Vec3
  /** Unit axes in bow axes, in the order of the moments, right-handed. */
  readonly axes: Mat3
}

/** Off-diagonal size, relative to the largest element, at which a tensor counts as diagonal: float64 rounding. */
const DIAGONAL = 1e-17
const SWEEPS = 30

/**
 * Principal moments and axes of a symmetric tensor by cyclic Jacobi rotations (Golub & Van Loan,
 * "Matrix Computations", section 8.5). It always converges for a symmetric 3×3, keeps the axes
 * orthogonal when moments coincide, and needs no library in the part of the page that loads first.
 * Equal moments: any orthogonal pair in their plane is returned.
 */
export function principal(t: Tensor): Principal {
  const a = tensorMatrix(t).map((row) => [...row]) as number[][]
  const v = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ]
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    const size = Math.max(Math.abs(a[0]![0]!), Math.abs(a[1]![1]!), Math.abs(a[2]![2]!))
    const off = Math.max(Math.abs(a[0]![1]!), Math.abs(a[0]![2]!), Math.abs(a[1]![2]!))
    if (off <= DIAGONAL * size) break
    rotate(a, v, 0, 1)
    rotate(a, v, 0, 2)
    rotate(a, v, 1, 2)
  }
  const order = [0, 1, 2].sort((i, j) => a[i]![i]! - a[j]![j]!)
  const column = (k: number): Vec3 => [v[0]![k]!, v[1]![k]!, v[2]![k]!]
  const first = column(order[0]!)
  const second = column(order[1]!)
  const moments: Vec3 = [a[order[0]!]![order[0]!]!, a[order[1]!]![order[1]!]!, a[order[2]!]![order[2]!]!]
  return { moments, axes: [first, second, cross(first, second)] }
}

function rotate(a: number[][], v: number[][], p: number, q: number): void {
  const apq = a[p]![q]!
  if (apq === 0) return
  const theta = (a[q]![q]! - a[p]![p]!) / (2 * apq)
  const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1))
  const c = 1 / Math.sqrt(t * t + 1)
  const s = t * c
  for (let k = 0; k < 3; k++) {
    const akp = a[k]![p]!
    const akq = a[k]![q]!
    a[k]![p] = c * akp - s * akq
    a[k]![q] = s * akp + c * akq
  }
  for (let k = 0; k < 3; k++) {
    const apk = a[p]![k]!
    const aqk = a[q]![k]!
    a[p]![k] = c * apk - s * aqk
    a[q]![k] = s * apk + c * aqk
    const vkp = v[k]![p]!
    const vkq = v[k]![q]!
    v[k]![p] = c * vkp - s * vkq
    v[k]![q] = s * vkp + c * vkq
  }
  a[p]![q] = 0
  a[q]![p] = 0
}
