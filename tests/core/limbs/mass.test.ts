import { describe, expect, it } from "vitest"
import type { LimbState } from "../../../src/core/limbs"
import { braced, shortBow, targetBow, wrappedBow } from "./bows"

/** Centre and second moments by Simpson's rule on the limb redrawn between its nodes by its own end angles. */
function bySimpson(state: LimbState, length: number, massTaper: number) {
  let mass = 0
  let forward = 0
  let out = 0
  let ff = 0
  let fo = 0
  let oo = 0
  for (let index = 1; index < state.nodes.length; index += 1) {
    const a = state.nodes[index - 1]
    const b = state.nodes[index]
    if (a === undefined || b === undefined) throw new Error("missing node")
    const span = (b.fraction - a.fraction) * length
    // Cubic through both ends and both directions, by arc length.
    const middle = {
      fraction: (a.fraction + b.fraction) / 2,
      forward: (a.forward + b.forward) / 2 + (span / 8) * (Math.sin(a.angle) - Math.sin(b.angle)),
      out: (a.out + b.out) / 2 + (span / 8) * (Math.cos(a.angle) - Math.cos(b.angle)),
    }
    for (const [node, weight] of [
      [a, 1],
      [middle, 4],
      [b, 1],
    ] as const) {
      const share = (weight / 6) * span * (1 - (1 - massTaper) * node.fraction)
      mass += share
      forward += share * node.forward
      out += share * node.out
      ff += share * node.forward ** 2
      fo += share * node.forward * node.out
      oo += share * node.out ** 2
    }
  }
  const centre = { forward: forward / mass, out: out / mass }
  return {
    centre,
    forwardForward: ff / mass - centre.forward ** 2,
    forwardOut: fo / mass - centre.forward * centre.out,
    outOut: oo / mass - centre.out ** 2,
  }
}

describe("a bent limb's mass", () => {
  for (const [name, setup] of [
    ["target bow", targetBow],
    ["wrapped bow", wrappedBow],
    ["short bow", shortBow],
  ] as const) {
    it(`of the ${name} has the centre and second moments that its nodes have`, () => {
      const { brace, full } = braced(setup)
      for (const state of [brace, full]) {
        const { centre, ...second } = bySimpson(state, setup.limb.length, setup.limb.massTaper)
        expect(state.centre.forward).toBeCloseTo(centre.forward, 6)
        expect(state.centre.out).toBeCloseTo(centre.out, 6)
        expect(state.secondMoments.forwardForward).toBeCloseTo(second.forwardForward, 7)
        expect(state.secondMoments.forwardOut).toBeCloseTo(second.forwardOut, 7)
        expect(state.secondMoments.outOut).toBeCloseTo(second.outOut, 7)
      }
    })
  }

  it("moves back and inward as the bow is drawn", () => {
    const { brace, full } = braced(targetBow)
    expect(full.centre.forward).toBeLessThan(brace.centre.forward)
    expect(full.centre.out).toBeLessThan(brace.centre.out)
  })
})
