import { describe, expect, it } from "vitest"
import type { UnitChoice } from "../../src/describe/format"
import { changeText, missText, suggestionText, waysText } from "../../src/describe/suggestions"
import type { Element } from "../../src/scene/schema"
import type { KnobKind, StructureKind, Suggestion } from "../../src/scene/suggest"
import { newElement } from "../../src/scene/templates"
import { arm, discs, extender, rigged, rod, vbar } from "../scene/documents"
import { sceneOf } from "../scene/scenes"

const metric: UnitChoice = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" }
const arms = () => ({
  left: arm(35, 12, [extender(), rod(), discs()]),
  right: arm(35, 12, [extender(), rod(), discs()]),
})
const scene = sceneOf(
  rigged({
    front: [extender(), vbar(arms()), rod(), discs(), rod(), discs()],
    upper: [discs({ count: 1 })],
    back: [vbar(), vbar({ left: arm(35, 12, [discs({ count: 2 })]) })],
  }),
)

const common = {
  id: "any",
  target: "forwardMm",
  predicted: { before: 63, after: 48.13 },
  breaks: [],
  cost: 2,
} as const
const change = (kind: KnobKind, ...sets: [key: string, from: number, value: number][]): Suggestion => ({
  ...common,
  kind,
  changes: sets.map(([key, , value]) => ({ key, value })),
  from: sets.map(([, from]) => from),
})
const parts = (kind: StructureKind, put: Element | null, ...chains: string[]): Suggestion => {
  const at = { index: 0, put }
  const edits = chains.map((path) => ({ ...at, path, chain: [] }))
  return { ...common, kind, edits }
}
/** Without the no-break spaces that keep numbers and units together. */
const plain = (text: string) => text.replaceAll("\u00a0", " ")

describe("a suggestion in words", () => {
  it.each<[string, Suggestion]>([
    ["2 discs off the front rod (stack 1)", change("discs", ["front/weights:count", 5, 3])],
    ["1 disc onto the front rod (stack 2)", change("discs", ["front/weights#2:count", 5, 6])],
    ["3 discs onto the upper mount", change("discs", ["upper/weights:count", 1, 4])],
    ["2 discs onto the back V-bar 2 left arm", change("discs", ["back/vbar#2/left/weights:count", 2, 4])],
    [
      "1 disc off each side rod",
      change("discs", ["front/vbar/left/weights:count", 5, 4], ["front/vbar/right/weights:count", 5, 4]),
    ],
    [
      "2 discs from the right side rod to the left",
      change("shiftDiscs", ["front/vbar/left/weights:count", 5, 7], ["front/vbar/right/weights:count", 5, 3]),
    ],
    [
      "Spread both side rods 6.0° wider",
      change("splay", ["front/vbar/left:splayDeg", 35, 41], ["front/vbar/right:splayDeg", 35, 41]),
    ],
    ["Fold the back V-bar 2 left arm 7.0° closer", change("splay", ["back/vbar#2/left:splayDeg", 35, 28])],
    [
      "Lift both side rods 5.0°",
      change("droop", ["front/vbar/left:droopDeg", 12, 7], ["front/vbar/right:droopDeg", 12, 7]),
    ],
    ["Swap the front rod 2 for shorter, 710.0 → 650.0 mm", change("length", ["front/rod#2:lengthMm", 710, 650])],
    [
      "Swap both side extenders for longer, 105.0 → 110.0 mm",
      change(
        "length",
        ["front/vbar/left/extender:lengthMm", 105, 110],
        ["front/vbar/right/extender:lengthMm", 105, 110],
      ),
    ],
    [
      "Put an extender of 75.0 mm, 41 g, behind the front rod",
      parts("addExtender", { ...newElement.extender, lengthMm: 75, massG: 41 }, "front"),
    ],
    [
      "Put an extender of 50.0 mm, 28 g, behind each side rod",
      parts("addExtender", { ...newElement.extender, lengthMm: 50, massG: 28 }, "front/vbar/left", "front/vbar/right"),
    ],
    ["Take the front extender out", parts("removeExtender", null, "front")],
    ["Take both side extenders out", parts("removeExtender", null, "front/vbar/left", "front/vbar/right")],
    ["1 disc as a new stack onto the upper mount", parts("addStack", { ...newElement.weights, count: 1 }, "upper")],
    [
      "3 discs as a new stack onto each side rod",
      parts("addStack", newElement.weights, "front/vbar/left", "front/vbar/right"),
    ],
    ["Take the stack off each side rod", parts("removeStack", null, "front/vbar/left", "front/vbar/right")],
  ])("reads: %s", (text, suggestion) => {
    expect(plain(changeText(scene, suggestion, metric))).toBe(text)
  })

  it("tells what comes of it in the chosen units, and which met targets would be lost", () => {
    const suggestion = change("discs", ["upper/weights:count", 1, 3])
    expect(suggestionText(scene, suggestion, metric)).toBe(
      "2 discs onto the upper mount: balance point forward 63.0 → 48.1 mm",
    )
    const inches = suggestionText(scene, suggestion, { ...metric, lengthUnit: "in" })
    expect(inches).toBe("2 discs onto the upper mount: balance point forward 2.48 → 1.89 in")
    const costly: Suggestion = { ...suggestion, breaks: ["upMm", "massMaxG"] }
    expect(suggestionText(scene, costly, metric)).toMatch(/mm; would put balance point up and mass off target$/)
  })

  it("shows as many digits as it takes to tell before from after", () => {
    const fine: Suggestion = {
      ...change("discs", ["upper/weights:count", 1, 3]),
      predicted: { before: 63, after: 63.013 },
    }
    expect(suggestionText(scene, fine, metric)).toMatch(/63\.00 → 63\.01 mm$/)
  })
})

describe("a missed target in words", () => {
  it("counts the changes that would mend it", () => {
    expect([0, 1, 5].map(waysText)).toEqual([
      "no single change mends it",
      "1 change would mend it",
      "5 changes would mend it",
    ])
  })

  it("says by how much, and nothing inside", () => {
    const state = { key: "massMaxG", value: 3120, min: Number.NEGATIVE_INFINITY, max: 3000, missedBy: 120 } as const
    expect(plain(missText(state, metric))).toBe("Mass 120 g over its target")
    expect(plain(missText({ ...state, key: "sideMm", missedBy: -3 }, metric))).toBe(
      "Balance point to the right 3.0 mm under its target",
    )
    expect(missText({ ...state, missedBy: 0 }, metric)).toBe("")
    expect(plain(missText(state, metric, Number.POSITIVE_INFINITY))).toBe(
      "Mass 120 g over its target, if the riser is as assumed",
    )
    expect(missText(state, metric, 7)).toBe(missText(state, metric))
  })
})
