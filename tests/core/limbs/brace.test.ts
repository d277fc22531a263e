import { describe, expect, it } from "vitest"
import { solveBrace, solveDrawn } from "../../../src/core/limbs"
import { braced, drawn, shortBow, targetBow, withLimb, wrappedBow } from "./bows"

const setups = [
  ["the target bow", targetBow],
  ["the target bow with its string on the limb", wrappedBow],
  ["the short bow", shortBow],
] as const

describe("a strung bow", () => {
  for (const [name, setup] of setups) {
    it(`${name} has its straight string at the brace height and draws its weight at its draw length`, () => {
      const { brace, full, halfString } = braced(setup)
      expect(brace.contact.forward).toBeCloseTo(-setup.braceHeight, 12)
      expect(brace.contact.out + brace.wrappedLength).toBeCloseTo(halfString, 12)
      expect(brace.drawForce).toBeCloseTo(0, 9)
      expect(brace.stringTension).toBeGreaterThan(setup.drawWeight / 2)
      expect(full.drawForce).toBeCloseTo(setup.drawWeight, 9)
    })

    it(`${name} keeps its string length and its root at every draw`, () => {
      const limbs = braced(setup)
      for (const share of [0.02, 0.3, 0.7, 1, 1.05]) {
        const draw = setup.braceHeight + share * (setup.drawLength - setup.braceHeight)
        const { contact, wrappedLength, stringAngle, nodes } = drawn(limbs, draw)
        const free = Math.hypot(contact.forward + draw, contact.out)
        expect(free + wrappedLength).toBeCloseTo(limbs.halfString, 11)
        expect(Math.atan2(contact.forward + draw, contact.out)).toBeCloseTo(stringAngle, 11)
        const root = nodes[0]
        expect(root?.forward).toBeCloseTo(setup.limb.rootForward, 13)
        expect(root?.out).toBeCloseTo(setup.limb.rootOut, 13)
        expect(root?.angle).toBeCloseTo(setup.limb.rootAngle, 10)
      }
    })
  }

  it("is the same whether found from nothing or from a bow like it", () => {
    for (const [, setup] of setups) {
      const near = braced(withLimb(setup, { length: setup.limb.length + 0.013, recurve: setup.limb.recurve - 0.05 }))
      const warm = solveBrace(setup, near)
      const cold = braced(setup)
      if (!warm.ok) throw new Error(warm.reason)
      expect(warm.value.halfString).toBeCloseTo(cold.halfString, 12)
      expect(warm.value.rootStiffness / cold.rootStiffness).toBeCloseTo(1, 10)
    }
  })

  it("weighs the same shape twice as heavy with twice the stiffness", () => {
    const light = braced(targetBow)
    const heavy = braced({ ...targetBow, drawWeight: 2 * targetBow.drawWeight })
    expect(heavy.rootStiffness / light.rootStiffness).toBeCloseTo(2, 12)
    expect(heavy.full.tip).toEqual(light.full.tip)
  })

  it("k times as long in everything has k times the lengths, the same angles and k² times the stiffness", () => {
    const k = 1.7
    const { limb } = targetBow
    const grown = withLimb(
      { ...targetBow, braceHeight: k * targetBow.braceHeight, drawLength: k * targetBow.drawLength },
      { length: k * limb.length, rootForward: k * limb.rootForward, rootOut: k * limb.rootOut },
    )
    const small = braced(targetBow)
    const large = braced(grown)
    expect(large.halfString / small.halfString).toBeCloseTo(k, 11)
    expect(large.full.tip.out / small.full.tip.out).toBeCloseTo(k, 11)
    expect(large.full.tipAngle).toBeCloseTo(small.full.tipAngle, 11)
    expect(large.brace.stringTension / small.brace.stringTension).toBeCloseTo(1, 11)
    expect(large.rootStiffness / small.rootStiffness).toBeCloseTo(k * k, 11)
    expect(large.full.secondMoments.outOut / small.full.secondMoments.outOut).toBeCloseTo(k * k, 11)
    expect(large.full.bendingEnergy / small.full.bendingEnergy).toBeCloseTo(k, 11)
  })
})

describe("a string that lies on the limb", () => {
  it("leaves it tangentially and covers the part beyond, until the draw lifts it off at the tip", () => {
    const limbs = braced(wrappedBow)
    const { brace, full } = limbs
    const uncovered = brace.nodes.filter((node) => Math.abs(node.fraction - (1 - brace.wrappedLength / 0.6)) < 1e-12)
    expect(uncovered[0]?.angle).toBeCloseTo(brace.stringAngle, 12)
    expect(full.wrappedLength).toBe(0)
    const covered = [0.22, 0.24, 0.26, 0.28, 0.3].map((draw) => drawn(limbs, draw).wrappedLength)
    expect(covered).toEqual([...covered].sort((a, b) => b - a))
  })

  it("never crosses it: the covered part curves away from the string's line", () => {
    const { brace } = braced(wrappedBow)
    for (const node of brace.nodes) expect(node.forward).toBeGreaterThan(brace.contact.forward - 1e-12)
  })

  it("changes nothing on a bow whose string never touches the limb", () => {
    const free = braced(withLimb(targetBow, { recurve: 0.03 }))
    const wrapped = braced(withLimb(wrappedBow, { recurve: 0.03 }))
    expect(free.brace.tipAngle).toBeLessThan(0)
    expect(wrapped.halfString).toBe(free.halfString)
    expect(wrapped.full.tip).toEqual(free.full.tip)
  })

  // Seen in an independent program for this limb: 34 mm of the limb covered at brace.
  it("covers 34 mm at brace on the limb that was measured by another program", () => {
    expect(braced(withLimb(wrappedBow, { rootForward: 0 })).brace.wrappedLength).toBeCloseTo(0.034, 3)
  })
})

describe("a bow that cannot be", () => {
  it("names the brace height and the nearest that works, too low or too high", () => {
    for (const [braceHeight, side] of [
      [0.05, 1],
      [0.5, -1],
    ] as const) {
      const failed = solveBrace({ ...targetBow, braceHeight })
      if (failed.ok) throw new Error("expected a failure")
      expect(failed).toMatchObject({ reason: "brace-unreachable", quantity: "braceHeight" })
      const nearest = failed.nearest ?? Number.NaN
      const working = nearest < braceHeight ? Math.floor(nearest * 1000) : Math.ceil(nearest * 1000)
      expect(solveBrace({ ...targetBow, braceHeight: working / 1000 }).ok).toBe(true)
      expect(solveBrace({ ...targetBow, braceHeight: nearest }).ok).toBe(true)
      expect(solveBrace({ ...targetBow, braceHeight: nearest - side * 0.005 }).ok).toBe(false)
    }
  })

  it("says so when the string would lie in front of the limb's root", () => {
    const failed = solveBrace(withLimb(targetBow, { rootForward: -0.27 }))
    expect(failed).toMatchObject({ ok: false, reason: "brace-unreachable", inFront: true })
    expect(solveBrace({ ...targetBow, braceHeight: 0.5 })).toMatchObject({ inFront: false })
  })

  it("refuses a draw length that is not beyond the brace height", () => {
    for (const drawLength of [0.22, 0.17]) {
      const failed = solveBrace({ ...targetBow, drawLength })
      expect(failed).toMatchObject({ ok: false, reason: "draw-below-brace", quantity: "drawLength", nearest: 0.22 })
    }
    const below = solveDrawn(braced(targetBow), 0.21)
    expect(below).toMatchObject({ ok: false, reason: "draw-below-brace" })
  })

  it("cannot be drawn past limb and string in one straight line, and can to the length it names", () => {
    const failed = solveBrace({ ...targetBow, drawLength: 1.45 })
    if (failed.ok) throw new Error("expected a failure")
    expect(failed).toMatchObject({ reason: "draw-past-string", quantity: "drawLength" })
    const nearest = failed.nearest ?? Number.NaN
    expect(nearest).toBeGreaterThan(1)
    expect(solveBrace({ ...targetBow, drawLength: Math.floor(nearest * 1000) / 1000 }).ok).toBe(true)
  })

  it("names the number that no limb can have", () => {
    for (const [name, wrong, fault] of [
      ["length", 0, "not-positive"],
      ["rootOut", -0.2, "not-positive"],
      ["stiffnessTaper", 0, "not-positive"],
      ["massTaper", -0.1, "negative"],
      ["mass", Number.NaN, "negative"],
      ["recurve", 7, "beyond-half-turn"],
      ["rootAngle", Number.POSITIVE_INFINITY, "beyond-half-turn"],
      ["recurveFrom", 1, "recurve-past-tip"],
      ["rootForward", Number.NaN, "not-finite"],
    ] as const) {
      const failed = solveBrace(withLimb(targetBow, { [name]: wrong }))
      expect(failed).toMatchObject({ ok: false, reason: "not-a-limb", quantity: name, fault })
    }
    expect(solveBrace({ ...targetBow, drawWeight: 0 })).toMatchObject({ quantity: "drawWeight" })
    expect(solveBrace({ ...targetBow, braceHeight: Number.NaN })).toMatchObject({ quantity: "braceHeight" })
  })
})
