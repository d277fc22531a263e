import { expect, test } from "vitest"
import { parseScene, readScene } from "../../src/scene/parse"
import type { Scene } from "../../src/scene/schema"
import { serializeScene } from "../../src/scene/serialize"
import { fullDocument, recurveBow, smallestDocument } from "./documents"

const read = (document: unknown): Scene => {
  const result = readScene(document)
  if (!result.ok) throw new Error(JSON.stringify(result.errors))
  return result.value
}

test.each([
  ["the smallest scene", smallestDocument()],
  ["a scene with everything", fullDocument()],
  ["a recurve", { ...fullDocument(), bow: { ...recurveBow(), stringWrap: true, hand: "left" } }],
])("%s, saved and loaded, is equal, and saved again gives the same text", (_, document) => {
  const scene = read(document)
  const text = serializeScene(scene)
  const again = parseScene(text)
  expect(again).toEqual({ ok: true, value: scene })
  expect(serializeScene((again as { value: Scene }).value)).toBe(text)
})

test("defaults are written out, so that a later bench with other defaults reads the same bow", () => {
  const saved = JSON.parse(serializeScene(read(smallestDocument())))
  expect(saved).toMatchObject({
    notes: "",
    bow: { hand: "right", limbs: { gyrationMm: [0, 0, 0] } },
    accessories: [],
    rig: [],
    archer: { elbowElevationDeg: 3 },
    pose: { draw: 0, slopeDeg: 0, cantDeg: 0 },
  })
})

test("keys stand in the format's order, whatever order they were read in", () => {
  const reversed = Object.fromEntries(Object.entries(smallestDocument()).reverse())
  expect(serializeScene(read(reversed))).toBe(serializeScene(read(smallestDocument())))
  expect(Object.keys(JSON.parse(serializeScene(read(reversed)))).slice(0, 4)).toEqual([
    "format",
    "version",
    "name",
    "notes",
  ])
})

test("lists of numbers stand on one line, and the text ends in a line break", () => {
  const text = serializeScene(read(fullDocument()))
  expect(text).toContain('"centreMm": [13, 7, 3],')
  expect(text.endsWith("}\n")).toBe(true)
})

test("words that look like a list of numbers are left as they were typed", () => {
  const notes = '[\n  2,\n  3\n]\t[ 5, 7 ]\u2028"\\'
  const again = parseScene(serializeScene(read({ ...smallestDocument(), name: "[ 2, 3 ]", notes })))
  expect(again).toMatchObject({ ok: true, value: { name: "[ 2, 3 ]", notes } })
})

test("very small, very large and negative numbers come back to the last bit", () => {
  const document = smallestDocument()
  Object.assign(document.bow as object, { centreLineMm: -1.2345678901234567e-7, nockHeightMm: 0.1 + 0.2 })
  expect(parseScene(serializeScene(read(document)))).toEqual({ ok: true, value: read(document) })
})
