/** Every scene that comes with the bench opens, adds up and reports. */
import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, test } from "vitest"
import { readText } from "../../src/report/readText"
import { run } from "../../src/report/run"
import { parseScene } from "../../src/scene/parse"

const folder = join(import.meta.dirname, "../../scenes")
const names = readdirSync(folder).filter((name) => name.endsWith(".json"))

test("at least six scenes are shipped", () => {
  expect(names.length).toBeGreaterThanOrEqual(6)
})

describe.each(names)("%s", (name) => {
  const file = join(folder, name)

  test("is a valid scene with a name, and says that it is invented", () => {
    const scene = parseScene(readFileSync(file, "utf8"))
    if (!scene.ok) throw new Error(JSON.stringify(scene.errors))
    expect(scene.value.name).not.toBe("")
    expect(scene.value.notes).toMatch(/invented/i)
  })

  test("reports finite numbers only, in text and as JSON", () => {
    const { output, errors } = run([file, "--json"], readText)
    expect(errors).toBe("")
    // JSON writes NaN and infinities as null.
    expect(output).not.toContain("null")
    const { massG, drawCurve, slopes } = JSON.parse(output)
    expect(massG).toBeGreaterThan(500)
    expect(massG).toBeLessThan(8000)
    expect(drawCurve.length).toBeGreaterThanOrEqual(25)
    expect(slopes).toHaveLength(19)
    expect(run([file], readText).output).not.toMatch(/NaN|Infinity|undefined/)
  })
})

test("all are reported in one run", () => {
  const { output, status } = run([...names.map((name) => join(folder, name)), "--json"], readText)
  expect(status).toBe(0)
  expect(JSON.parse(output).map((each: { file: string }) => each.file)).toEqual(names.map((name) => join(folder, name)))
})
