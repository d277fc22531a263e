/** Files that people have: one frozen set per version. What they said must stay what is read. */
import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { expect, test } from "vitest"
import { evaluate } from "../../src/scene/evaluate"
import { figuresOf } from "../../src/scene/figures"
import { parseScene } from "../../src/scene/parse"

const folder = join(import.meta.dirname, "old")
const text = (name: string) => readFileSync(join(folder, name), "utf8")
const read = (name: string) => {
  const result = parseScene(text(name))
  if (!result.ok) throw new Error(JSON.stringify(result.errors))
  return result.value
}

test("there are frozen files", () => {
  expect(readdirSync(folder)).toEqual(expect.arrayContaining(["v1.json", "v1-measured.json", "v1-recurve.json"]))
})

test.each(readdirSync(folder))("%s is read without an error", (name) => {
  expect(read(name).name).not.toBe("")
})

test.each(["v1.json", "v1-measured.json", "v1-recurve.json"])(
  "%s keeps every word and number it was saved with",
  (name) => {
    expect(read(name)).toMatchObject(JSON.parse(text(name)))
  },
)

test("the compound of version 1 weighs and balances what it did when it was frozen", () => {
  const evaluated = evaluate(read("v1.json"))
  if (!evaluated.ok) throw new Error(JSON.stringify(evaluated.errors))
  const { massG, centreMm, inertiaGrip, fullDraw, parts } = figuresOf(evaluated.value)
  // By hand from the file: riser, limbs, string; accessories; front, upper, lower and back chains.
  const bow = 1700 + 2 * 310 + 11 + (210 + 31 + 13)
  const front = 61 + 97 + (57 + 7 * 28) + (59 + 29 + 3 * 28) + 123 + 29 + 5 * 28 + 2 * 57
  expect(massG).toBeCloseTo(bow + front + 28 + 61 + (23 + 2 * (19 + 151)), 9)
  expect(parts).toHaveLength(23)
  // What the first program for version 1 printed, to catch any later drift.
  expect(centreMm[0]).toBeCloseTo(86.297286671, 8)
  expect(centreMm[1]).toBeCloseTo(-29.549714596, 8)
  expect(centreMm[2]).toBeCloseTo(1.406495222, 8)
  expect(inertiaGrip[2][2]).toBeCloseTo(0.457403124, 8)
  expect(fullDraw.netLiftNm).toBeCloseTo(-1.552302389, 8)
})
