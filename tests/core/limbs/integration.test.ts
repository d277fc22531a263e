import { describe, expect, it } from "vitest"
import { driftShares, kickShares, stageStarts } from "../../../src/core/limbs/composition"
import { largestLoad, stepsPerPiece } from "../../../src/core/limbs/settings"
import { shoot } from "../../../src/core/limbs/shoot"

const shape = { recurve: 1.3, recurveFrom: 0.55, stiffnessTaper: 0.35, massTaper: 0.5 }
const hold = { contactAngle: 0.4, contact: 1, load: 5 }

describe("the integration along the limb", () => {
  it("uses stage shares that add up to one step and never leave it", () => {
    const sum = (shares: Float64Array) => shares.reduce((total, share) => total + share, 0)
    expect(sum(driftShares)).toBeCloseTo(1, 15)
    expect(sum(kickShares)).toBeCloseTo(1, 15)
    for (const start of stageStarts) {
      expect(start).toBeGreaterThan(-1e-15)
      expect(start).toBeLessThan(1 + 1e-15)
    }
  })

  it("is of eighth order: half the step, a 256th of the error or close to it", () => {
    const exact = shoot(shape, hold, false, 40).across
    const coarse = Math.abs(shoot(shape, hold, false, 3).across - exact)
    const fine = Math.abs(shoot(shape, hold, false, 6).across - exact)
    expect(Math.log2(coarse / fine)).toBeGreaterThan(7)
  })

  it("leaves less than 1e-6 at half the largest load and the steepest tapers, and less than 1e-9 on usual limbs", () => {
    const error = (stiffnessTaper: number, load: number): number => {
      const at = (steps: number) => shoot({ ...shape, stiffnessTaper }, { ...hold, load }, false, steps)
      const got = at(stepsPerPiece)
      const exact = at(8 * stepsPerPiece)
      return Math.hypot(got.angle - exact.angle, got.across - exact.across, got.along - exact.along)
    }
    for (const taper of [0.05, 0.35, 1, 5]) expect(error(taper, largestLoad / 2)).toBeLessThan(1e-6)
    for (const taper of [0.05, 0.35, 1, 5]) expect(error(taper, largestLoad)).toBeLessThan(1e-5)
    for (const taper of [0.2, 0.35, 1]) expect(error(taper, 7)).toBeLessThan(1e-9)
  })

  it("knows its own derivatives by tip angle, contact and load", () => {
    const h = 1e-5
    const names = ["angle", "across", "along"] as const
    const tip = shoot(shape, hold, false, stepsPerPiece)
    const covered = { contactAngle: 0, contact: 0.83, load: 5 }
    const onLimb = shoot(shape, covered, false, stepsPerPiece)
    const slope = (base: typeof hold, key: keyof typeof hold, name: (typeof names)[number]) => {
      const at = (step: number) => shoot(shape, { ...base, [key]: base[key] + step }, false, stepsPerPiece)[name]
      return (at(h) - at(-h)) / (2 * h)
    }
    for (const name of names) {
      expect(tip[`${name}ByPlace`]).toBeCloseTo(slope(hold, "contactAngle", name), 8)
      expect(tip[`${name}ByLoad`]).toBeCloseTo(slope(hold, "load", name), 8)
      expect(onLimb[`${name}ByPlace`]).toBeCloseTo(slope(covered, "contact", name), 8)
      expect(onLimb[`${name}ByLoad`]).toBeCloseTo(slope(covered, "load", name), 8)
    }
  })
})
