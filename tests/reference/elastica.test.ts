import ellipe from "@stdlib/math-base-special-ellipe"
import ellipk from "@stdlib/math-base-special-ellipk"
import { describe, expect, it } from "vitest"
import { solveBrace } from "../../src/core/limbs"
import { holdOf, type Problem } from "../../src/core/limbs/equilibrium"
import { follow } from "../../src/core/limbs/follow"
import { stepsPerPiece } from "../../src/core/limbs/settings"
import { unstrungTip } from "../../src/core/limbs/shape"
import { shoot } from "../../src/core/limbs/shoot"

/** A straight limb of one stiffness standing straight out: the textbook cantilever. */
const cantilever = { recurve: 0, recurveFrom: 0.37, stiffnessTaper: 1, massTaper: 1 }

const straightLimb = { ...cantilever, rootForward: 0, rootOut: 0.31, rootAngle: 0, length: 1, mass: 0.2 }

/** The shortening 0.0026465483 has the fewest digits; half a unit of its last is 2e-8 of it. */
const tableDigits = 1e-7

const relative = (got: number, expected: number): number => Math.abs(got / expected - 1)

/**
 * Cantilever under a transverse dead load at its end, by PL²/EI: slope of the end (rad), its deflection and its
 * shortening over the length. Elliptic-integral solution of Bisshopp and Drucker, Quarterly of Applied Mathematics 3
 * (1945); the rows for 1, 2, 5 and 10 also in Mattiasson, International Journal for Numerical Methods in Engineering 17
 * (1981) 145-153, Table 1, which prints 5 digits. Digits beyond: evaluated from the elliptic integrals at 25 digits.
 */
const transverse: readonly (readonly [number, number, number, number])[] = [
  [0.2, 0.099636163, 0.066364482, 0.0026465483],
  [0.5, 0.2445336471, 0.16214358, 0.015918962],
  [1, 0.4613519497, 0.30172077, 0.056433236],
  [1.5, 0.6395398262, 0.41097821, 0.1079415],
  [2, 0.7817498316, 0.49345748, 0.16064172],
  [3, 0.9860169467, 0.60325344, 0.25442018],
  [4, 1.121239347, 0.66996418, 0.32894124],
  [5, 1.215368118, 0.71379152, 0.38762836],
  [6, 1.283697286, 0.74457115, 0.43458883],
  [8, 1.374431507, 0.78498237, 0.50482773],
  [10, 1.430285539, 0.81060902, 0.5549956],
]

describe("the bent limb against the exact elastica", () => {
  for (const [load, slope, deflection, shortening] of transverse) {
    it(`bends under a transverse end load of ${load} EI/L² as the elliptic integrals say, to 1e-7`, () => {
      const square = Math.PI / 2
      const problemAt = (share: number): Problem => ({
        shape: cantilever,
        rootAngle: 0,
        demand: { kind: "held", stringAngle: square, forward: -deflection * share },
        wraps: false,
      })
      const { arrived, unknowns } = follow(problemAt, { lift: square, load: 0 }, 0, 1)
      expect(arrived).toBe(true)
      expect(relative(unknowns.load, load)).toBeLessThan(tableDigits)
      expect(relative(unknowns.lift - square, slope)).toBeLessThan(tableDigits)
      const end = shoot(cantilever, holdOf(cantilever, unknowns, false), false, stepsPerPiece)
      expect(relative(1 + end.across, shortening)).toBeLessThan(tableDigits)
    })
  }

  // Closed form of the buckled clamped-free column: Timoshenko and Gere, Theory of Elastic Stability, 2nd ed., 2.7 (the
  // formulas from memory, the integrals from npm @stdlib): with k = sin(θ/2), P L²/EI = K², deflection 2k/K, height
  // 2E/K - 1. A straight limb of one stiffness standing straight out, strung, is that column.
  for (const tipDegrees of [7, 20, 45, 70, 100]) {
    it(`stands strung like a column buckled to ${tipDegrees}° at its end, to 1e-9`, () => {
      const tipAngle = (tipDegrees * Math.PI) / 180
      const k = Math.sin(tipAngle / 2)
      const first = ellipk(k * k)
      const length = 0.57
      const limb = { ...straightLimb, length }
      const braceHeight = (length * 2 * k) / first
      const solved = solveBrace({ limb, braceHeight, drawLength: braceHeight + 0.13, drawWeight: 150 })
      if (!solved.ok) throw new Error(solved.reason)
      const { brace } = solved.value
      expect(relative(brace.unknowns.load, first ** 2)).toBeLessThan(1e-9)
      expect(relative(-brace.tipAngle, tipAngle)).toBeLessThan(1e-9)
      const height = length * ((2 * ellipe(k * k)) / first - 1)
      expect(Math.abs(brace.tip.out - limb.rootOut - height)).toBeLessThan(1e-9 * length)
      expect(Math.abs(solved.value.halfString - limb.rootOut - height)).toBeLessThan(1e-9 * length)
    })
  }

  // An end moment of (π/2)EI/L bends a cantilever into a quarter circle, its end at (2L/π, 2L/π) and square to the
  // root: plain geometry. A limb that is recurved by a quarter turn all along and pulled by nothing has that shape.
  it("has an evenly curved limb end where a quarter circle ends", () => {
    const shape = { ...cantilever, recurve: Math.PI / 2, recurveFrom: 0 }
    const end = shoot(shape, { contactAngle: Math.PI / 2, contact: 1, load: 0 }, false, stepsPerPiece)
    expect(end.angle).toBeCloseTo(0, 13)
    expect(end.across).toBeCloseTo(2 / Math.PI, 13)
    expect(end.along).toBeCloseTo(2 / Math.PI, 13)
    const tip = unstrungTip(shape, 0)
    expect(tip.forward).toBeCloseTo(2 / Math.PI, 13)
    expect(tip.out).toBeCloseTo(2 / Math.PI, 13)
  })
})
