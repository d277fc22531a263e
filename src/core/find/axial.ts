import { axisymmetricTensor, type Vec3 } from "../solids"
import { FIRST, FORWARD_REACH, MASS, PITCH, REACHES, ROLL, SIDE_REACH, SUMS, YAW } from "./quantities"

/** Pieces on one line, told by what does not depend on where the line starts and points. SI. */
export interface AxialBody {
  readonly mass: number
  /** Sum of mass times distance from the line's start, kg·m. */
  readonly along: number
  /** Moments of inertia about the line's start: about the line, and across it, kg·m². */
  readonly axial: number
  readonly across: number
  /** Where each piece begins and ends on the line, and its radius, m. */
  readonly pieces: readonly { readonly from: number; readonly to: number; readonly radius: number }[]
}

export const NO_BODY: AxialBody = { mass: 0, along: 0, axial: 0, across: 0, pieces: [] }

/**
 * Adds a body that stands on the line from `start` (m) along the unit `direction`, bow axes, to a row of SUMS and of
 * REACHES. With p the first moment about the start, the parallel-axis theorem gives about the grip
 * Ixx + 2(s·p − s_x p_x) + m(s·s − s_x²), and so on. How far a piece reaches is that of a cylinder's rim.
 */
export function addAxial(
  body: AxialBody,
  start: Vec3,
  direction: Vec3,
  into: { readonly sums: Float64Array; readonly reaches: Float64Array },
  row: number,
): void {
  const { mass, along, axial, across, pieces } = body
  const about = axisymmetricTensor(axial, across, direction)
  const [x, y, z] = start
  const [px, py, pz] = [direction[0] * along, direction[1] * along, direction[2] * along]
  const { sums, reaches } = into
  const at = row * SUMS
  sums[at + MASS]! += mass
  sums[at + FIRST]! += mass * x + px
  sums[at + FIRST + 1]! += mass * y + py
  sums[at + FIRST + 2]! += mass * z + pz
  sums[at + ROLL]! += about.xx + 2 * (y * py + z * pz) + mass * (y * y + z * z)
  sums[at + YAW]! += about.yy + 2 * (x * px + z * pz) + mass * (x * x + z * z)
  sums[at + PITCH]! += about.zz + 2 * (x * px + y * py) + mass * (x * x + y * y)
  const rim = (component: number) => Math.sqrt(Math.max(0, 1 - component * component))
  const [rimX, rimZ] = [rim(direction[0]), rim(direction[2])]
  for (const { from, to, radius } of pieces) {
    for (const t of [from, to]) {
      const forward = row * REACHES + FORWARD_REACH
      const side = row * REACHES + SIDE_REACH
      reaches[forward] = Math.max(reaches[forward]!, x + direction[0] * t + radius * rimX)
      reaches[side] = Math.max(reaches[side]!, Math.abs(z + direction[2] * t) + radius * rimZ)
    }
  }
}

/** `count` options that weigh and use nothing yet, of a kit with `kinds` kinds of pieces. */
export const blankOptions = (count: number, kinds: number) => ({
  count,
  sums: new Float64Array(count * SUMS),
  // Nothing reaches nowhere, not to the grip: a rig wholly behind it has a negative reach forward.
  reaches: new Float64Array(count * REACHES).fill(Number.NEGATIVE_INFINITY),
  uses: new Uint8Array(count * kinds),
})
