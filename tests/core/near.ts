import { expect } from "vitest"
import type { Tensor } from "../../src/core/solids"

/** Float64 rounding of a handful of operations, relative to the size of the numbers. */
export const ROUNDING = 1e-13

/** Numbers, one by one, within `tolerance` of the largest of the wanted ones (at least 1e-300, for all zeros). */
export function expectNear(actual: readonly number[], wanted: readonly number[], tolerance = ROUNDING): void {
  expect(actual).toHaveLength(wanted.length)
  const size = Math.max(1e-300, ...wanted.map(Math.abs))
  actual.forEach((value, index) => {
    const off = Math.abs(value - wanted[index]!) / size
    expect(off, `${actual} against ${wanted}`).toBeLessThanOrEqual(tolerance)
  })
}

export const members = (t: Tensor): number[] => [t.xx, t.yy, t.zz, t.xy, t.xz, t.yz]

export const expectTensor = (actual: Tensor, wanted: Tensor, tolerance = ROUNDING): void =>
  expectNear(members(actual), members(wanted), tolerance)
