import { expect } from "vitest"
import { type MassMoments, momentsOf, scaleMoments, sumMoments } from "../../../src/core/sensitivity"
import type { Solid } from "../../../src/core/solids"

/** Relative step of the differences: its square, the central difference's own error, is far below the tolerance. */
const STEP = 1e-5
/** Relative to the largest member: truncation about 1e-10, rounding of values over the step about 1e-11. */
const DIFFERENCE_TOLERANCE = 1e-8

export const momentsOfAll = (solids: readonly Solid[]): MassMoments => sumMoments(...solids.map(momentsOf))

const members = (m: MassMoments): number[] => [m.mass, ...m.first, ...Object.values(m.aboutOrigin)]

/** Expects `rate` to be the derivative at 0 of the mass moments of the solids that `at` makes. */
export function expectRate(rate: MassMoments, at: (change: number) => readonly Solid[]): void {
  const difference = sumMoments(momentsOfAll(at(STEP)), scaleMoments(momentsOfAll(at(-STEP)), -1))
  expectSame(rate, scaleMoments(difference, 1 / (2 * STEP)), DIFFERENCE_TOLERANCE)
}

export function expectSame(given: MassMoments, wanted: MassMoments, tolerance = 1e-12): void {
  const size = Math.max(...members(wanted).map(Math.abs), 1e-3)
  members(given).forEach((value, i) => {
    expect(Math.abs(value - (members(wanted)[i] ?? Number.NaN)) / size, `member ${i}`).toBeLessThan(tolerance)
  })
}
