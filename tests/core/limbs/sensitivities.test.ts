import { describe, expect, it } from "vitest"
import { type LimbParameter, type LimbSetup, limbParameters, limbSensitivities } from "../../../src/core/limbs"
import { stepsPerPiece } from "../../../src/core/limbs/settings"
import { shoot } from "../../../src/core/limbs/shoot"
import { DifferentiatedPass, lanes } from "../../../src/core/limbs/variation"
import { braced, drawn, shortBow, targetBow, withLimb, wrappedBow } from "./bows"

/** Step of the central differences, in the parameter's own unit, for parameters of about one, and of metres. */
const step = 1e-4

/** Everything a state's rates describe, by name, in one row of numbers. */
const figures = (halfString: number, of: Omit<ReturnType<typeof drawn>, "unknowns">): Map<string, number> =>
  new Map([
    ["halfString", halfString],
    ["drawForce", of.drawForce],
    ["stringTension", of.stringTension],
    ["stringAngle", of.stringAngle],
    ["tipAngle", of.tipAngle],
    ["tip.forward", of.tip.forward],
    ["tip.out", of.tip.out],
    ["contact.forward", of.contact.forward],
    ["contact.out", of.contact.out],
    ["centre.forward", of.centre.forward],
    ["centre.out", of.centre.out],
    ["forwardForward", of.secondMoments.forwardForward],
    ["forwardOut", of.secondMoments.forwardOut],
    ["outOut", of.secondMoments.outOut],
    ...of.nodes.flatMap((node, index): [string, number][] => [
      [`node ${index} forward`, node.forward],
      [`node ${index} out`, node.out],
      [`node ${index} angle`, node.angle],
    ]),
  ])

function changed(setup: LimbSetup, parameter: LimbParameter, by: number): LimbSetup {
  if (parameter === "draw") return setup
  if (parameter === "braceHeight" || parameter === "drawLength" || parameter === "drawWeight") {
    return { ...setup, [parameter]: setup[parameter] + by }
  }
  return withLimb(setup, { [parameter]: setup.limb[parameter] + by })
}

function differences(setup: LimbSetup, draw: number, parameter: LimbParameter): Map<string, number> {
  const at = (by: number) => {
    const limbs = braced(changed(setup, parameter, by))
    return figures(limbs.halfString, drawn(limbs, parameter === "draw" ? draw + by : draw))
  }
  // Fourth-order central differences.
  const [near, far] = [1, 2].map((times) => [at(times * step), at(-times * step)] as const)
  if (near === undefined || far === undefined) throw new Error("no differences")
  const slope = (pair: typeof near, name: string) => (pair[0].get(name) ?? 0) - (pair[1].get(name) ?? 0)
  return new Map([...near[0].keys()].map((name) => [name, (8 * slope(near, name) - slope(far, name)) / (12 * step)]))
}

const bows = [
  ["target bow", targetBow],
  ["target bow with its string on the limb", wrappedBow],
  ["short bow", shortBow],
] as const

describe("a limb's sensitivities against fourth-order differences of the solver", () => {
  for (const [name, setup] of bows) {
    for (const [pose, share] of [
      ["near brace", 0.01],
      ["half drawn", 0.5],
      ["fully drawn", 1],
    ] as const) {
      const draw = setup.braceHeight + share * (setup.drawLength - setup.braceHeight)
      for (const parameter of limbParameters) {
        it(`${name}, ${pose}: every figure by ${parameter}`, () => {
          const limbs = braced(setup)
          const rates = limbSensitivities(limbs, drawn(limbs, draw))[parameter]
          const got = figures(rates.halfString, { ...rates, nodes: rates.nodes() } as unknown as ReturnType<
            typeof drawn
          >)
          const expected = differences(setup, draw, parameter)
          expect([...got.keys()]).toEqual([...expected.keys()])
          for (const [figure, slope] of expected) {
            const scale = Math.max(1, Math.abs(slope))
            expect(Math.abs((got.get(figure) ?? Number.NaN) - slope) / scale, figure).toBeLessThan(3e-7)
          }
        })
      }
    }
  }

  it("are the same at an end of the draw whether the end is found again or taken from the bow", () => {
    for (const [, setup] of bows) {
      const limbs = braced(setup)
      const again = limbSensitivities({ ...limbs }, { ...limbs.full })
      for (const parameter of limbParameters) {
        const { nodes: _, ...rates } = limbSensitivities(limbs, limbs.full)[parameter]
        expect(again[parameter]).toMatchObject(rates)
      }
    }
  })

  it("holds at brace itself: what moves with the brace height is its own rate and the draw's together", () => {
    for (const [, setup] of bows) {
      const limbs = braced(setup)
      const { braceHeight, draw } = limbSensitivities(limbs, limbs.brace)
      const at = (by: number) => braced({ ...setup, braceHeight: setup.braceHeight + by }).brace
      const slope = (of: (state: typeof limbs.brace) => number) =>
        (8 * (of(at(step)) - of(at(-step))) - (of(at(2 * step)) - of(at(-2 * step)))) / (12 * step)
      expect(braceHeight.contact.forward + draw.contact.forward).toBeCloseTo(-1, 10)
      expect(braceHeight.centre.forward + draw.centre.forward).toBeCloseTo(
        slope((state) => state.centre.forward),
        7,
      )
      expect(braceHeight.centre.out + draw.centre.out).toBeCloseTo(
        slope((state) => state.centre.out),
        7,
      )
      const outOut = slope((state) => state.secondMoments.outOut)
      expect(braceHeight.secondMoments.outOut + draw.secondMoments.outOut).toBeCloseTo(outOut, 7)
      expect(braceHeight.drawForce + draw.drawForce).toBeCloseTo(0, 7)
    }
  })

  it("knows at brace, half and full draw the slope of the draw curve", () => {
    for (const [, setup] of bows) {
      const limbs = braced(setup)
      for (const state of [limbs.brace, drawn(limbs, 0.4), limbs.full]) {
        expect(limbSensitivities(limbs, state).draw.drawForce / state.drawForceRate).toBeCloseTo(1, 8)
      }
    }
  })

  it("leaves the draw weight alone at full draw, whatever changes but the weight and the nock", () => {
    const limbs = braced(targetBow)
    const rates = limbSensitivities(limbs, limbs.full)
    for (const parameter of limbParameters) {
      if (parameter === "drawWeight") expect(rates[parameter].drawForce).toBeCloseTo(1, 9)
      else if (parameter !== "draw" && parameter !== "drawLength") {
        expect(rates[parameter].drawForce).toBeCloseTo(0, 7)
      }
    }
    expect(rates.draw.drawForce + rates.drawLength.drawForce).toBeCloseTo(0, 7)
  })

  it("knows the rate by where the recurve begins even when it begins at the root, from the limb's side", () => {
    const setup = withLimb(shortBow, { recurveFrom: 0 })
    const limbs = braced(setup)
    const rate = limbSensitivities(limbs, limbs.full).recurveFrom
    const at = (recurveFrom: number) => braced(withLimb(setup, { recurveFrom }))
    const slope = (of: (made: typeof limbs) => number) =>
      (-3 * of(at(0)) + 4 * of(at(step)) - of(at(2 * step))) / (2 * step)
    expect(rate.halfString).toBeCloseTo(
      slope((made) => made.halfString),
      6,
    )
    expect(rate.tip.forward).toBeCloseTo(
      slope((made) => made.full.tip.forward),
      6,
    )
    expect(rate.centre.out).toBeCloseTo(
      slope((made) => made.full.centre.out),
      6,
    )
  })

  it("differentiates the very pass that the solver makes: both read the same to rounding", () => {
    const shape = { recurve: 1.3, recurveFrom: 0.55, stiffnessTaper: 0.35, massTaper: 0.5 }
    for (const contact of [1, 0.83]) {
      const hold = { contactAngle: contact < 1 ? 0 : 0.4, contact, load: 5 }
      const reading = shoot(shape, hold, true, stepsPerPiece)
      const pass = new DifferentiatedPass()
      pass.run(shape, hold)
      expect(pass.angle[0]).toBeCloseTo(reading.angle, 13)
      expect(pass.across[0]).toBeCloseTo(reading.across, 13)
      expect(pass.along[0]).toBeCloseTo(reading.along, 13)
      expect(pass.angle[1]).toBeCloseTo(reading.angleByPlace, 12)
      expect(pass.across[2]).toBeCloseTo(reading.acrossByLoad, 12)
      const moments = [reading.momentP, reading.momentQ, reading.momentPP, reading.momentPQ, reading.momentQQ]
      moments.forEach((moment, kind) => expect(pass.moments[kind * lanes]).toBeCloseTo(moment, 13))
    }
  })
})
