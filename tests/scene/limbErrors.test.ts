import { describe, expect, it, test } from "vitest"
import { errorText } from "../../src/describe/errorText"
import { limbWords, unsolvable } from "../../src/scene/limbErrors"
import { inFileUnits } from "../../src/scene/words"
import { limbFaults as french } from "../../src/words/fr/limbFaults"
import { sceneFaults as frenchFaults } from "../../src/words/fr/sceneFaults"

const brace = { ok: false, reason: "brace-unreachable", quantity: "braceHeight", braceHeight: 0.05 } as const
const drawn = { ok: false, reason: "draw-past-string", quantity: "drawLength", draw: 1.45, straight: 1.3002 } as const

describe("a limb that cannot take its shape", () => {
  it("is an error at the number to change", () => {
    const paths = (["braceHeight", "rootOut"] as const).map((quantity) => {
      const failed = unsolvable({ ok: false, reason: "not-a-limb", fault: "not-positive", quantity })
      return failed.ok ? [] : failed.errors.map(({ path, code, message }) => [path, code, message])
    })
    expect(paths).toEqual([
      [["bow.braceHeightMm", "unsolvable", "This number must be above zero."]],
      [["bow.limbs.rootMm[1]", "unsolvable", "This number must be above zero."]],
    ])
  })

  it("names a length that works, cut away from the one that does not", () => {
    expect(inFileUnits(limbWords({ ...brace, inFront: false, nearest: 0.1632 }))).toBe(
      "The brace height cannot be reached: this limb has no strung shape with its string 50 mm behind the grip; " +
        "the nearest that works is 164 mm.",
    )
    expect(inFileUnits(limbWords({ ...drawn, nearest: 1.2958 }))).toBe(
      "The draw of 1450 mm is more than the string allows: limb and string pulled into one straight line reach " +
        "1300 mm; it can be drawn to 1295 mm.",
    )
  })

  it("says so where none near it works", () => {
    expect(inFileUnits(limbWords({ ...brace, inFront: true }))).toBe(
      "The brace height cannot be reached: a string 50 mm behind the grip would lie in front of the limb's root; " +
        "no brace height near it works either.",
    )
    expect(inFileUnits(limbWords({ ok: false, reason: "limb-gives-way", quantity: "drawLength", draw: 0.7 }))).toBe(
      "On the way to a draw of 700 mm the limb would give way, snapping into another shape or straightening out; " +
        "it cannot be drawn at all.",
    )
  })

  it("is said in inches where those were chosen, to the decimals that they are shown with", () => {
    const words = limbWords({ ...drawn, nearest: 1.2958 })
    expect(errorText({ message: "", words }, { massUnit: "g", lengthUnit: "in", forceUnit: "N" })).toMatch(
      /^The draw of 57\.09\sin .* reach 51\.19\sin; it can be drawn to 51\.01\sin\.$/,
    )
  })
})

test("French puts its numbers where French has them", () => {
  expect(french.drawPastString("1450 mm", "1300 mm", french.mostDraw("1295 mm")).join("")).toBe(
    "L’allonge de 1450 mm est plus que ce que la corde permet\u00a0: branche et corde tendues en une seule ligne " +
      "droite atteignent 1300 mm\u00a0; l’arc peut être armé jusqu’à 1295 mm.",
  )
  expect(frenchFaults.number("7", "10", "20 mm").join("")).toBe(
    "7 ne convient pas\u00a0; il faut un nombre entre 10 et 20 mm",
  )
  expect([0, 1, 2].map(frenchFaults.list)).toEqual([
    "une liste de 0 élément",
    "une liste de 1 élément",
    "une liste de 2 éléments",
  ])
})
