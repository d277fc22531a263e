import { describe, expect, test } from "vitest"
import { bodyOf, bodyRates, unknowns, vectorOf } from "../../../src/core/measure"
import { type ReadoutKey, readouts } from "../../../src/describe/readouts"
import { figuresOf } from "../../../src/scene/figures"
import { figureSpreads, fitScene, riserOf } from "../../../src/scene/measure"
import { assumedBody } from "../../../src/scene/measure/setup"
import { numberRates } from "../../../src/scene/measure/spread"
import type { Scene } from "../../../src/scene/schema"
import { fullDocument } from "../documents"
import { drawnCompound, hungDocument, recurveDocument, sceneOf } from "../scenes"
import { evaluated, hung, onBow, weighed, wholeSession } from "./sessions"

const STEP = 1e-5
/** Of a central difference, relative to the number's own size or to one: truncation and rounding below 1e-7 each. */
const DIFFERENCE_TOLERANCE = 2e-6

const shown = (scene: Scene): Record<string, number | null> => {
  const figures = figuresOf(evaluated(scene))
  return Object.fromEntries(Object.entries(readouts).map(([key, { of }]) => [key, of(figures)]))
}

describe("rates of every live number by the riser", () => {
  test.each<[string, Scene]>([
    ["a rigged compound", sceneOf(fullDocument())],
    ["a drawn one on a slope", sceneOf(drawnCompound())],
    ["one with swing weights", sceneOf(hungDocument())],
    ["a drawn recurve", sceneOf(recurveDocument(0.6))],
  ])("are the derivatives, for %s", (_, scene) => {
    const body = assumedBody(scene)
    const rates = bodyRates(body).map((rate) => numberRates(evaluated(scene), rate))
    const at = (k: number, step: number) => {
      const moved = bodyOf(vectorOf(body).map((value, i) => (i === k ? value + step * Math.abs(value || 1) : value)))
      return shown({ ...scene, bow: { ...scene.bow, riser: riserOf({ body: moved }) } })
    }
    unknowns.forEach((name, k) => {
      const [above, below] = [at(k, STEP), at(k, -STEP)]
      const width = 2 * STEP * Math.abs(vectorOf(body)[k]! || 1)
      for (const [key, value] of Object.entries(above)) {
        if (value === null) continue
        const slope = (value - below[key]!) / width
        const rate = rates[k]![key] ?? 0
        expect(
          Math.abs(rate - slope) / Math.max(1, Math.abs(slope), Math.abs(value)),
          `${key} by ${name}`,
        ).toBeLessThan(DIFFERENCE_TOLERANCE)
      }
    })
  })
})

describe("the ± of the live numbers", () => {
  const scene = sceneOf(fullDocument())
  const fitted = (measurements: Scene["measurements"]) => {
    const made = fitScene({ ...scene, measurements })
    if (made === null || !made.ok) throw new Error("no fit")
    return figureSpreads(evaluated(scene), made.value)
  }

  test("are those of numbers the page shows", () => {
    for (const key of Object.keys(fitted(wholeSession(scene, onBow)))) expect(readouts).toHaveProperty([key])
  })

  test("are finite once all is determined, and of a size one can believe", () => {
    const spreads = fitted(wholeSession(scene, onBow))
    for (const [key, spread] of Object.entries(spreads)) expect(Number.isFinite(spread), key).toBe(true)
    // 4 g of scale, at 95 %.
    expect(spreads.massG).toBeGreaterThan(5)
    expect(spreads.massG).toBeLessThan(8)
    expect(spreads["centreMm.forward"]).toBeGreaterThan(0.2)
    expect(spreads["centreMm.forward"]).toBeLessThan(10)
  })

  test("are infinite for what the readings do not determine, and only for that", () => {
    const weighedOnly = fitted([weighed(scene, onBow)])
    expect(weighedOnly.massG).toBeLessThan(8)
    expect(weighedOnly["centreMm.forward"]).toBe(Number.POSITIVE_INFINITY)
    const balanced = fitted([
      weighed(scene, onBow),
      hung(scene, onBow, [-190, 210, 0]),
      hung(scene, onBow, [310, -71, 13]),
    ])
    const finite = Object.entries(balanced).filter(([, spread]) => Number.isFinite(spread))
    const keys = finite.map(([key]) => key as ReadoutKey)
    expect(keys).toContain("fullDraw.netLiftNm")
    expect(keys).toContain("centreMm.up")
    expect(keys).not.toContain("inertiaGrip.pitch")
  })
})
