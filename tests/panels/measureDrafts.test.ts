import { expect, test } from "vitest"
import { type Drafts, draftsIn, NO_DRAFTS } from "../../src/panels/measure/drafts"

test("drafts that were kept come back as they were", () => {
  const drafts: Drafts = {
    sheet: { page: "log" },
    reading: {
      ...NO_DRAFTS.reading,
      kind: "hang",
      cantRead: false,
      point: "grip",
      values: { slopeDeg: 7 },
      texts: { cantDeg: "two" },
      words: { note: "windy" },
    },
    tried: { ...NO_DRAFTS.tried, words: { feel: "slow" }, editing: { place: 2, was: { rig: [] } as never } },
  }
  expect(draftsIn(JSON.stringify(drafts))).toEqual(drafts)
})

test.each([
  ["nothing", null],
  ["no JSON", "{"],
  ["a list", "[2]"],
  ["a word", '"hang"'],
  ["other shapes", JSON.stringify({ reading: 3, tried: null, sheet: { page: "third" } })],
])("of %s that was kept, empty drafts are made", (_, text) => {
  expect(draftsIn(text)).toEqual(NO_DRAFTS)
})

test("what is of another shape in kept drafts is left out, and the rest stays", () => {
  const odd = { kind: "guess", on: 3, point: "grip", values: { slopeDeg: "7", massG: 2 }, texts: null, editing: 5 }
  expect(draftsIn(JSON.stringify({ reading: odd })).reading).toEqual({
    ...NO_DRAFTS.reading,
    point: "grip",
    values: { massG: 2 },
  })
})
