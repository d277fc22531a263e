/**
 * The swing weight's arm and inertias through the periods they give, T = 2π√(I/(m g d)) (OpenStax University Physics
 * volume 1, section 15.4). Values it prints rounded are compared to half a unit of their last digit.
 */
import { describe, expect, test } from "vitest"
import { GRAVITY, NEWTON_PER_LBF } from "../../src/core/constants"
import { aboutAxis, slender, tensorAbout } from "../../src/core/solids"
import { pendulumOf, type SwingWeight } from "../../src/core/swing"
import { readScene } from "../../src/scene/parse"
import { bowWords } from "../../src/describe/reportWords"
import { expectNear } from "../core/near"
import { smallestDocument } from "../scene/documents"

const rod = (length: number, mass: number): SwingWeight => ({
  stemLength: length,
  stemMass: mass,
  bobMass: 0,
  bobRadius: 0,
  bobLength: 0,
  joint: "hinge",
  stop: Math.PI,
})
const simple = (length: number): SwingWeight => ({ ...rod(length, 0), bobMass: 0.5 })

/** About the hinge, kg·m². */
const aboutHinge = (swing: SwingWeight) => {
  const { mass, arm, acrossCentre } = pendulumOf(swing)
  return acrossCentre + mass * arm * arm
}
const period = (swing: SwingWeight, g: number) => {
  const { mass, arm } = pendulumOf(swing)
  return 2 * Math.PI * Math.sqrt(aboutHinge(swing) / (mass * g * arm))
}
const printed = (actual: number, value: number, decimals: number) =>
  expect(Math.abs(actual - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals)

describe("OpenStax, examples of chapter 15", () => {
  test("15.3: a simple pendulum of 0.75000 m with a period of 1.7357 s stands where g is 9.8281 m/s²", () => {
    // T ∝ 1/√g, so the period at g = 1 gives g.
    printed((period(simple(0.75), 1) / 1.7357) ** 2, 9.8281, 4)
  })

  test("15.4: a beam hung at its end that swings at 0.50 Hz is 1.49 m long", () => {
    // T ∝ √L: the length for 2.0 s from that of any other beam.
    const length = (g: number) => (2 / period(rod(1, 3), g)) ** 2
    printed(length(9.81), 1.49, 2)
    printed(length(9.8), 1.49, 2)
  })

  test("15.5: a rod of 4.00 kg and 0.30 m that twists about its middle in 0.50 s hangs on 4.73 N·m", () => {
    const inertia = aboutAxis(slender(4, [-0.15, 0, 0], [0.15, 0, 0]).aboutCentre, [0, 1, 0])
    // The book truncates 4.7374.
    expect(Math.trunc(inertia * ((2 * Math.PI) / 0.5) ** 2 * 100) / 100).toBe(4.73)
  })
})

describe("derived from the same formula", () => {
  test("a rod of 0.30 m hung at its end swings in 0.8972935138 s, as a simple pendulum of two thirds of it", () => {
    expect(period(rod(0.3, 0.2), GRAVITY)).toBeCloseTo(0.8972935138, 10)
    expectNear([period(simple(0.2), GRAVITY)], [period(rod(0.3, 0.7), GRAVITY)])
  })

  test("a rod of 1 m swings fastest hung 0.2886751346 m from its middle, in 1.5245413805 s", () => {
    const solid = slender(2, [-0.5, 0, 0], [0.5, 0, 0])
    const at = (d: number) => 2 * Math.PI * Math.sqrt(tensorAbout([solid], [d, 0, 0]).zz / (2 * GRAVITY * d))
    expect(at(0.2886751346)).toBeCloseTo(1.5245413805, 10)
    for (const off of [-0.01, 0.01]) expect(at(0.2886751346 + off)).toBeGreaterThan(at(0.2886751346))
  })
})

describe("units", () => {
  test("standard gravity is 9.80665 m/s² (CGPM 1901) and a pound-force 4.4482216152605 N (from the exact pound)", () => {
    expect([GRAVITY, NEWTON_PER_LBF]).toEqual([9.80665, 4.4482216152605])
  })

  test("a nock 26.25 in from the grip pivot is the 28 in of a marked draw weight (AMO draw length is true draw and 1¾ in, archeryreport.com 2010)", () => {
    const document = smallestDocument()
    Object.assign(document.bow as object, { drawLengthMm: 26.25 * 25.4 })
    const scene = readScene(document)
    expect(scene.ok && bowWords(scene.value.bow)).toContain("(28.0 in AMO)")
  })
})
