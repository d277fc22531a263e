import { readFileSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, test } from "vitest"
import { type MeasureResult, measureResult } from "../../../src/scene/measure"
import { parseScene } from "../../../src/scene/parse"
import type { Measurement, Scene } from "../../../src/scene/schema"

const read = () => {
  const scene = parseScene(
    readFileSync(join(import.meta.dirname, "../../../scenes/target-recurve-measured.json"), "utf8"),
  )
  if (!scene.ok) throw new Error(JSON.stringify(scene.errors))
  return scene.value
}

test("the measured bow that comes with the bench has the riser its readings give, and a ± at every number", () => {
  const scene = read()
  const result = measureResult(scene)
  if (result === null || !result.ok) throw new Error("no fit")
  const { fit, known, spreads, readings, doubtful } = result.value
  expect(doubtful).toBe(false)
  expect(fit).toMatchObject({ converged: true, applied: true, held: false })
  expect(new Set(Object.values(known))).toEqual(new Set(["yes"]))
  for (const spread of Object.values(spreads)) expect(Number.isFinite(spread)).toBe(true)
  expect(spreads["centreMm.forward"]).toBeLessThan(5)
  // Every reading of it is checked by another.
  for (const { misses } of readings) for (const { studentised } of misses) expect(studentised).not.toBeNull()
  expect(scene.log).toHaveLength(2)
})

describe("a mistake in the shipped readings", () => {
  const mistaken = (place: number, change: object) => {
    const scene = read()
    const measurements = scene.measurements!.map((one, index) => (index === place ? { ...one, ...change } : one))
    const result = measureResult({ ...scene, measurements } as Scene)
    if (result === null || !result.ok) throw new Error("no fit")
    return result.value
  }
  const suspects = ({ readings }: MeasureResult) => readings.filter(({ suspect }) => suspect).map(({ place }) => place)

  test("of 8° in the hang from the upper mount names it and the other one of the bare bow, as either explains it", () => {
    expect(suspects(mistaken(3, { slopeDeg: 18 }))).toEqual([2, 3])
  })

  test("of 100 g on the first scale names both scales", () => {
    expect(suspects(mistaken(0, { massG: 1943 }))).toEqual([0, 1])
  })

  test("of 4° in that hang cannot be told from chance, and the reading says that so much would not show", () => {
    const result = mistaken(3, { slopeDeg: 14 })
    expect(result.doubtful).toBe(false)
    const [slope] = result.readings[3]!.misses
    expect(slope!.what).toBe("slope")
    expect(slope!.unseen).toBeGreaterThan(3.9)
    // And the 8° that do show are more than it.
    expect(slope!.unseen).toBeLessThan(7.9)
  })

  test("that leaves nothing for the riser on the scale says what the rest weighs, alone or among sound readings", () => {
    const rest = mistaken(0, {}).fit.observations[0]!.rest.mass * 1e3
    expect(
      mistaken(0, { massG: 300 })
        .readings.map(({ outweighedByG }) => outweighedByG)
        .slice(0, 2),
    ).toEqual([rest, null])
    const scene = read()
    const alone = measureResult({ ...scene, measurements: [{ ...scene.measurements![0]!, massG: 300 } as Measurement] })
    if (alone === null || !alone.ok) throw new Error("no fit")
    expect(alone.value.readings[0]).toMatchObject({ outweighedByG: rest, suspect: false })
  })
})
