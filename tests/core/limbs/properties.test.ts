import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { drawCurve, type LimbSetup, limbSensitivities, solveBrace, solveDrawn } from "../../../src/core/limbs"
import { shapeOf, unstrungTip } from "../../../src/core/limbs/shape"

const degree = Math.PI / 180
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true })
const seeded = { seed: 23571113, numRuns: 100, endOnFailure: true }

const setupFrom = (
  limb: Record<Exclude<keyof LimbSetup["limb"], "mass" | "massTaper">, fc.Arbitrary<number>>,
  bow: { braceHeight: fc.Arbitrary<number>; pull: fc.Arbitrary<number> },
): fc.Arbitrary<LimbSetup> =>
  fc
    .record({
      limb: fc.record({ ...limb, mass: between(0.05, 0.3), massTaper: between(0, 3) }),
      ...bow,
      wrap: fc.boolean(),
    })
    .map(({ limb, braceHeight, pull, wrap }) => ({
      limb,
      braceHeight,
      drawLength: braceHeight + pull,
      drawWeight: 170,
      stringWrap: wrap,
    }))

/** Recurves as they are made (common practice, no source). */
const usualBows = setupFrom(
  {
    rootForward: between(-0.04, 0.04),
    rootOut: between(0.22, 0.34),
    length: between(0.5, 0.68),
    rootAngle: between(0, 14).map((angle) => angle * degree),
    recurve: between(5, 65).map((angle) => angle * degree),
    recurveFrom: between(0.4, 0.75),
    stiffnessTaper: between(0.2, 0.8),
  },
  { braceHeight: between(0.19, 0.25), pull: between(0.3, 0.47) },
)

/** Anything the scene's ranges allow, strung or not. */
const anyBows = setupFrom(
  {
    rootForward: between(-0.3, 0.3),
    rootOut: between(0.01, 0.8),
    length: between(0.05, 1.5),
    rootAngle: between(-60, 60).map((angle) => angle * degree),
    recurve: fc.oneof(fc.constantFrom(0, 150), between(0, 150)).map((angle) => angle * degree),
    recurveFrom: fc.oneof(fc.constantFrom(0, 0.95), between(0, 0.95)),
    stiffnessTaper: fc.oneof(fc.constantFrom(0.05, 5), between(0.05, 5)),
  },
  { braceHeight: between(0.05, 0.5), pull: between(0.001, 0.9) },
)

describe("any usual recurve", () => {
  it("is strung and drawn, stores in its limbs what was put in, and pulls harder the farther it is drawn", () => {
    fc.assert(
      fc.property(usualBows, (setup) => {
        const solved = solveBrace(setup)
        if (!solved.ok) throw new Error(solved.reason)
        const curve = drawCurve(solved.value)
        if (!curve.ok) throw new Error(curve.reason)
        const end = curve.value[curve.value.length - 1]
        expect(Math.abs((end?.work ?? 0) / (end?.energy ?? 1) - 1)).toBeLessThan(1e-4)
        for (let index = 1; index < curve.value.length; index += 1) {
          expect(curve.value[index]?.force).toBeGreaterThan(curve.value[index - 1]?.force ?? 0)
        }
      }),
      seeded,
    )
  })

  it("has its centre of mass between its root and its tip, and second moments a body can have", () => {
    fc.assert(
      fc.property(usualBows, between(0, 1), (setup, share) => {
        const solved = solveBrace(setup)
        if (!solved.ok) throw new Error(solved.reason)
        const draw = setup.braceHeight + share * (setup.drawLength - setup.braceHeight)
        const state = solveDrawn(solved.value, draw)
        if (!state.ok) throw new Error(state.reason)
        const { centre, secondMoments, nodes } = state.value
        expect(centre.out).toBeGreaterThan(setup.limb.rootOut)
        expect(centre.out).toBeLessThan(Math.max(...nodes.map((node) => node.out)))
        const { forwardForward, forwardOut, outOut } = secondMoments
        expect(forwardForward * outOut - forwardOut ** 2).toBeGreaterThan(0)
      }),
      seeded,
    )
  })

  it("is the same drawn backward from full draw as forward from brace", () => {
    fc.assert(
      fc.property(usualBows, between(0.05, 0.95), (setup, share) => {
        const solved = solveBrace(setup)
        if (!solved.ok) throw new Error(solved.reason)
        const draw = setup.braceHeight + share * (setup.drawLength - setup.braceHeight)
        const fromBrace = solveDrawn(solved.value, draw, solved.value.brace)
        const fromFull = solveDrawn(solved.value, draw, solved.value.full)
        if (!fromBrace.ok || !fromFull.ok) throw new Error("not solved")
        expect(fromBrace.value.drawForce).toBeCloseTo(fromFull.value.drawForce, 7)
      }),
      seeded,
    )
  })
})

describe("any limb within the ranges of a scene", () => {
  it("is strung and drawn with its string where it belongs, or says why not with a quantity and lengths that are numbers", () => {
    let strung = 0
    fc.assert(
      fc.property(anyBows, (setup) => {
        const solved = solveBrace(setup)
        if (!solved.ok) {
          const numbers = Object.values(solved).filter((value) => typeof value === "number")
          expect(numbers.every(Number.isFinite)).toBe(true)
          expect(["brace-unreachable", "draw-past-string", "limb-gives-way"]).toContain(solved.reason)
          return
        }
        strung += 1
        const { brace, full, halfString } = solved.value
        expect(brace.contact.forward).toBeCloseTo(-setup.braceHeight, 10)
        expect(brace.stringTension).toBeGreaterThan(0)
        expect(full.drawForce / setup.drawWeight).toBeCloseTo(1, 9)
        const free = Math.hypot(full.contact.forward + setup.drawLength, full.contact.out)
        expect(free + full.wrappedLength).toBeCloseTo(halfString, 10)
        const rates = limbSensitivities(solved.value, full)
        expect(Number.isFinite(rates.recurve.centre.forward + rates.length.drawForce)).toBe(true)
      }),
      { ...seeded, numRuns: 150 },
    )
    expect(strung).toBeGreaterThan(15)
  })

  it("works at the nearest value that a failure names", () => {
    let named = 0
    let worked = 0
    fc.assert(
      fc.property(anyBows, (setup) => {
        const solved = solveBrace(setup)
        if (solved.ok || solved.nearest === undefined) return
        named += 1
        const tried =
          solved.quantity === "braceHeight"
            ? solveBrace({ ...setup, braceHeight: solved.nearest, drawLength: solved.nearest + 1e-4 })
            : solveBrace({ ...setup, drawLength: solved.nearest })
        if (tried.ok) worked += 1
        else if (solved.quantity === "braceHeight") expect(tried.reason).not.toBe("brace-unreachable")
        else expect(solved.nearest - setup.braceHeight).toBeLessThan(1e-3)
      }),
      { ...seeded, numRuns: 60 },
    )
    expect(named).toBeGreaterThan(10)
    expect(worked / named).toBeGreaterThan(0.9)
  })

  it("bends from the unstrung shape that its lean and recurve describe", () => {
    fc.assert(
      fc.property(anyBows, ({ limb }) => {
        const tip = unstrungTip(shapeOf(limb), limb.rootAngle)
        expect(Math.hypot(tip.forward, tip.out)).toBeLessThanOrEqual(1 + 1e-12)
        const steps = 2000
        let forward = 0
        for (let index = 0; index < steps; index += 1) {
          const u = (index + 0.5) / steps
          const turned = (limb.recurve * Math.max(0, u - limb.recurveFrom)) / (1 - limb.recurveFrom)
          forward += Math.sin(limb.rootAngle + turned) / steps
        }
        expect(tip.forward).toBeCloseTo(forward, 5)
      }),
      seeded,
    )
  })
})
