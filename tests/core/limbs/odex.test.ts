import { describe, expect, it } from "vitest"
import { braced, drawn, shortBow, targetBow } from "./bows"
import { shootWithOdex } from "./odexLimb"

// Check: npm odex 2.0.4, a port of Hairer and Wanner's ODEX, which shares no code or formulation with ours.
describe("the drawn limb against an independent integrator", () => {
  for (const [name, setup] of [
    ["target bow", targetBow],
    ["short bow", shortBow],
  ] as const) {
    for (const share of [0.03, 0.5, 1]) {
      it(`${name} at draw fraction ${share} agrees in tip and tension to 1e-8`, () => {
        const limbs = braced(setup)
        const draw = setup.braceHeight + share * (setup.drawLength - setup.braceHeight)
        const state = drawn(limbs, draw)
        const start = {
          tipForward: state.tip.forward + 0.011,
          tipOut: state.tip.out - 0.007,
          load: state.unknowns.load * 1.05,
        }
        const other = shootWithOdex(limbs, draw, start, 1e-12)
        expect(Math.abs(state.tip.forward - other.tipForward)).toBeLessThan(1e-8 * setup.limb.length)
        expect(Math.abs(state.tip.out - other.tipOut)).toBeLessThan(1e-8 * setup.limb.length)
        expect(Math.abs(state.unknowns.load / other.load - 1)).toBeLessThan(1e-8)
      })
    }
  }
})
