import { readFileSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, test } from "vitest"
import { evaluate } from "../../src/scene/evaluate"
import { parseScene } from "../../src/scene/parse"
import { placeDimensions } from "../../src/takeaway/card/Dimensions"
import { dimensionsOf } from "../../src/takeaway/card/dimensions"
import { cutNotes, fits, usualPaper } from "../../src/takeaway/card/paper"

const METRIC = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const
const read = parseScene(readFileSync(join(import.meta.dirname, "../../scenes/target-recurve-drooped-bar.json"), "utf8"))
if (!read.ok) throw new Error("the shipped scene is not valid")
const evaluated = evaluate(read.value)
if (!evaluated.ok) throw new Error("the shipped scene cannot be strung")

describe("the lengths in a card's drawing", () => {
  test("go from where a chain begins to its far end, and from the string to the grip", () => {
    const all = dimensionsOf(evaluated.value, METRIC)
    // 127 + 32 + 730 + 22 mm and three discs of 7 mm; 254 mm and six discs of 7 mm.
    expect(Object.fromEntries(all.map(({ key, text }) => [key, text.replace("\u00a0", " ")]))).toEqual({
      front: "932 mm",
      "front/vbar/left": "296 mm",
      "front/vbar/right": "296 mm",
      brace: "brace 220 mm",
    })
    const brace = all.find(({ key }) => key === "brace")!
    expect(brace.to[0] - brace.from[0]).toBeCloseTo(0.22, 9)
  })

  test("stand beside what they measure, an arm's outside of it, and one seen end on is left out", () => {
    const draw = ([x, , z]: readonly [number, number, number]) => ({ x: x * 500, y: z * 500 })
    const flat = (at: readonly [number, number, number]) => ({ x: at[2] * 500, y: 0 })
    const all = dimensionsOf(evaluated.value, METRIC).filter(({ pane }) => pane === "top")
    for (const { key, at, a, b } of placeDimensions(all, { side: draw, top: draw })) {
      expect(Math.sign(at.y)).toBe(key.endsWith("left") ? -1 : 1)
      expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(20)
    }
    const front = dimensionsOf(evaluated.value, METRIC).filter(({ key }) => key === "front")
    expect(placeDimensions(front, { side: flat, top: flat })).toEqual([])
  })
})

test("what does not fit on the page is given up step by step: never more type, drawing or notes than before", () => {
  for (const [index, fit] of fits.entries()) {
    const before = fits[index - 1]
    if (before === undefined) continue
    expect(fit.type).toBeLessThan(before.type)
    expect(fit.drawing).toBeLessThan(before.drawing)
    expect(fit.notes).toBeLessThanOrEqual(before.notes)
  }
})

test("notes are cut at a word, and said to be", () => {
  expect(cutNotes("two three five", 14)).toEqual({ text: "two three five", cut: false })
  expect(cutNotes("two three five", 12)).toEqual({ text: "two three …", cut: true })
  expect(cutNotes("two three five", 0)).toEqual({ text: "", cut: true })
})

test("the paper is what people have where the page's language is spoken", () => {
  expect(["en-US", "fr-CA", "es-MX"].map(usualPaper)).toEqual(["letter", "letter", "letter"])
  expect(["en-GB", "fr", "de-DE", ""].map(usualPaper)).toEqual(["A4", "A4", "A4", "A4"])
})
