/** Any readings a file can hold: the fit has an answer that is one, or says that it has none. */
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { placeMm } from "../../src/scene/fields"
import { measureResult, nextReadings } from "../../src/scene/measure"
import { measureFields as f } from "../../src/scene/measure/fields"
import { parseScene } from "../../src/scene/parse"
import { serializeScene } from "../../src/scene/serialize"
import type { Measurement, Scene } from "../../src/scene/schema"
import { gyrationPossible } from "../../src/core/solids"
import { fullDocument } from "../scene/documents"
import { sceneOf } from "../scene/scenes"
import { number, SEED } from "./arbitraries"

const scene = sceneOf(fullDocument())
const seen = {
  excluded: fc.boolean(),
  note: fc.string({ maxLength: 20 }),
  date: fc.string({ maxLength: 10 }),
  on: fc.constantFrom("riser" as const, "bow" as const, "rigged" as const),
}
const place = fc.tuple(number(placeMm), number(placeMm), number(placeMm))
const axis = fc.constantFrom("pitch" as const, "yaw" as const, "roll" as const)
const timed = { axis, count: number(f.count), seconds: number(f.seconds), errorSeconds: number(f.errorSeconds) }
const reading = fc
  .oneof(
    fc.record({ kind: fc.constant("scale" as const), massG: number(f.massG), errorG: number(f.errorG), ...seen }),
    fc.record({
      kind: fc.constant("hang" as const),
      atMm: place,
      pointErrorMm: number(f.pointErrorMm),
      slopeDeg: number(f.slopeDeg),
      cantDeg: number(f.cantDeg),
      errorDeg: number(f.errorDeg),
      ...seen,
    }),
    fc.record({
      kind: fc.constant("swing" as const),
      atMm: place,
      pointErrorMm: number(f.pointErrorMm),
      amplitudeDeg: number(f.amplitudeDeg),
      ...timed,
      ...seen,
    }),
    fc.record({
      kind: fc.constant("twist" as const),
      lineMm: number(f.lineMm),
      radiusMm: number(f.radiusMm),
      radiusErrorMm: number(f.radiusErrorMm),
      ...timed,
      ...seen,
    }),
  )
  .map((one): Measurement => (one.on === "rigged" ? { ...one, rig: scene.rig } : one))
const measured = fc
  .array(reading, { minLength: 1, maxLength: 9 })
  .map((measurements): Scene => ({ ...scene, measurements }))

describe("any readings a file can hold", () => {
  test("are saved and read back to the last bit", () => {
    fc.assert(
      fc.property(measured, (one) => {
        expect(parseScene(serializeScene(one))).toEqual({ ok: true, value: one })
      }),
      { seed: SEED, numRuns: 60 },
    )
  })

  test("give a riser that is a body, with a ± that is a number or none, or say that there is none", () => {
    fc.assert(
      fc.property(measured, (one) => {
        const result = measureResult(one)
        if (result === null) {
          expect(one.measurements!.every(({ excluded }) => excluded)).toBe(true)
          return
        }
        if (!result.ok) throw new Error("the limbs of this bow can be strung")
        const { riser, fit, spreads } = result.value
        expect(Number.isFinite(riser.massG) && riser.massG > 0).toBe(true)
        expect(gyrationPossible(riser.gyrationMm)).toBe(true)
        for (const spread of Object.values(spreads)) expect(spread).toBeGreaterThanOrEqual(0)
        if (!fit.converged) expect(riser).toEqual(one.bow.riser)
        const next = nextReadings(one, fit)!
        for (const { spreadMm } of next.best) expect(spreadMm).toBeLessThanOrEqual(next.nowMm * (1 + 1e-9))
      }),
      { seed: SEED, numRuns: 120 },
    )
  })
})
