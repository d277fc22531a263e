import { readFileSync } from "node:fs"
import { join } from "node:path"
import { expect, test } from "vitest"
import { measureResult } from "../../../src/scene/measure"
import { parseScene } from "../../../src/scene/parse"

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
  const { fit, known, spreads, readings } = result.value
  expect(fit).toMatchObject({ converged: true, applied: true, outlier: null, held: false })
  expect(new Set(Object.values(known))).toEqual(new Set(["yes"]))
  for (const spread of Object.values(spreads)) expect(Number.isFinite(spread)).toBe(true)
  expect(spreads["centreMm.forward"]).toBeLessThan(5)
  // Every reading of it is checked by another.
  for (const { misses } of readings) for (const { studentised } of misses) expect(studentised).not.toBeNull()
  expect(scene.log).toHaveLength(2)
})
