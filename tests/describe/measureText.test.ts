import { describe, expect, test } from "vitest"
import { fitWords, missText, nowWords, readingText, spreadText, suspectMark } from "../../src/describe/measureText"
import type { MeasureResult, Miss } from "../../src/scene/measure"
import { readings } from "../scene/measure/documents"
import { fullDocument } from "../scene/documents"
import { sceneOf } from "../scene/scenes"

const units = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const
const plain = (text: string) => text.replaceAll("\u00a0", " ")
const { measurements = [] } = sceneOf({ ...fullDocument(), measurements: readings() })

test("a reading is told in a line, in the chosen units", () => {
  expect(measurements.map((reading) => plain(readingText(reading, units)))).toEqual([
    "2617 g",
    "front 23.0° up, canted 1.5° left",
    "front 7.0° down, cant not read",
    "20 swings in 21.70 s, pitch",
    "10 swings in 17.30 s, yaw",
  ])
  expect(plain(readingText(measurements[0]!, { ...units, massUnit: "oz" }))).toBe("92.31 oz")
})

test("a ± is told in the unit of its number, and as a question where nothing determines it", () => {
  expect(plain(spreadText(1.23, "length", units))).toBe("± 1.2")
  expect(plain(spreadText(25.4, "length", { ...units, lengthUnit: "in" }))).toBe("± 1.00")
  expect(plain(spreadText(Number.POSITIVE_INFINITY, "mass", units))).toBe("± ?")
  expect(spreadText(undefined, "mass", units)).toBe("")
})

test("a miss is told in the unit that was read, beside what is usual", () => {
  const miss: Miss = { what: "slope", by: -0.3, error: 0.7, studentised: -0.5, unseen: 3.5 }
  expect(plain(missText(miss, units))).toBe(
    "slope: 0.3° less than the fit; 0.7° is usual; a mistake below 3.5° may not show",
  )
  expect(plain(missText({ ...miss, what: "time", by: 0.25 }, units))).toContain("0.25 s more than the fit")
  expect(missText({ ...miss, studentised: null, unseen: null }, units)).toBe("slope: no other reading checks it")
})

describe("what a fit says for itself", () => {
  const told = (fit: object, suspects: readonly number[] = [], doubtful = suspects.length > 0) =>
    fitWords(
      {
        fit: { converged: true, freedom: 3, chiSquared: 2, held: false, ...fit },
        readings: [2, 3, 4].map((place) => ({ place, suspect: suspects.includes(place), outweighedByG: null })),
        doubtful,
      } as unknown as MeasureResult,
      units,
    )

  test("is, when all is well, what that can tell and what not", () => {
    expect(told({})).toEqual([
      expect.stringMatching(/^The readings agree within their errors. Small mistakes pass unseen/),
    ])
  })

  test("names the reading that is far off, by its number in the list", () => {
    expect(told({}, [4])).toEqual([expect.stringMatching(/^Reading 5 is far off: .* or leave it out/)])
    expect(suspectMark(1)).toContain("leave it out")
  })

  test("names all that may be far off, and advises against leaving out just one of them", () => {
    const [two] = told({}, [2, 3])
    expect(two).toMatch(/^Reading 3 or reading 4: one of them is far off; take both again\./)
    expect(told({}, [2, 3, 4])[0]).toMatch(
      /^Reading 3, reading 4 or reading 5: one of them is far off; take all of them again\./,
    )
    for (const words of [two, suspectMark(2)]) expect(words).not.toMatch(/leave .* out/)
  })

  test("is that the readings disagree, where leaving out no single one mends that", () => {
    expect(told({}, [], true)).toEqual([expect.stringContaining("no single one left out mends that")])
  })

  test("is that nothing is checked, that radii were held, or that nothing fits", () => {
    expect(told({ freedom: 0 })).toEqual([expect.stringContaining("no reading checks another")])
    expect(told({ held: true })).toContainEqual(expect.stringContaining("of no body"))
    expect(told({ converged: false }, [], true).join(" ")).toMatch(/no riser fits them. Check or leave out some.$/)
    expect(told({ converged: false }, [2, 4]).join(" ")).toMatch(/no riser fits them. Reading 3 or reading 5: one of/)
  })
})

test("a scale below the weight of what was on it besides the riser is said to be that, and nothing else of the fit", () => {
  const reading = { kind: "scale", massG: 300, on: "bow" }
  const said = (on: string) =>
    fitWords(
      {
        fit: { converged: false, freedom: 0, chiSquared: 9, held: false },
        readings: [{ place: 0, reading: { ...reading, on }, suspect: false, outweighedByG: 612 }],
        doubtful: true,
      } as unknown as MeasureResult,
      units,
    ).map(plain)
  expect(said("bow")).toEqual([
    expect.stringMatching(
      /^Reading 1, 300 g, is not above the 612 g that limbs, string and accessories weigh as entered/,
    ),
  ])
  expect(said("rigged")[0]).toContain("limbs, string, accessories and rig weigh")
})

test("how well the balance point is placed is knowledge only where readings place it, and said to be assumed else", () => {
  const next = { nowMm: 84.5, determined: false, best: [] }
  expect(plain(nowWords({ ...next, determined: true }, true, units))).toContain("is known to 84.5 mm")
  for (const read of [true, false]) {
    const words = plain(nowWords(next, read, units))
    expect(words).toContain("It is assumed to be within 84.5 mm")
    expect(words).not.toContain("known")
  }
  expect(nowWords(next, false, units)).toMatch(/^Nothing measured says yet/)
  expect(nowWords(next, true, units)).toMatch(/^The readings alone do not determine/)
})
