import { describe, expect, test } from "vitest"
import { disagreement, fitWords, missText, readingText, spreadText } from "../../src/describe/measureText"
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
  const miss: Miss = { what: "slope", by: -0.3, error: 0.7, studentised: -0.5 }
  expect(plain(missText(miss, units))).toBe("slope: 0.3° less than the fit; 0.7° is usual")
  expect(plain(missText({ ...miss, what: "time", by: 0.25 }, units))).toContain("0.25 s more than the fit")
  expect(missText({ ...miss, studentised: null }, units)).toBe("slope: no other reading checks it")
})

describe("what a fit says for itself", () => {
  const told = (fit: object, outlier = false) =>
    fitWords({
      fit: { converged: true, freedom: 3, chiSquared: 2, held: false, ...fit },
      readings: [{ place: 4, outlier }],
    } as unknown as MeasureResult)

  test("is nothing when all is well", () => {
    expect(told({})).toEqual([])
  })

  test("names the reading that is far off, by its number in the list", () => {
    expect(told({ chiSquared: 90 }, true)).toEqual([expect.stringContaining("Reading 5 is further off")])
  })

  test("is that the readings disagree, where none stands out", () => {
    expect(told({ chiSquared: 11.5 })).toEqual([expect.stringContaining("disagree")])
    expect(told({ chiSquared: 11 })).toEqual([])
  })

  test("is that nothing is checked, that radii were held, or that nothing fits", () => {
    expect(told({ freedom: 0 })).toEqual([expect.stringContaining("no reading checks another")])
    expect(told({ held: true })).toEqual([expect.stringContaining("of no body")])
    expect(told({ converged: false })).toEqual([expect.stringContaining("contradict")])
  })

  test("judges by the chi-squared table: 6.635, 15.086 and 23.209 at one in a hundred for 1, 5 and 10 (from memory)", () => {
    for (const [freedom, table] of [
      [1, 6.635],
      [5, 15.086],
      [10, 23.209],
    ] as const) {
      expect(Math.abs(disagreement(freedom) / table - 1)).toBeLessThan(0.02)
    }
  })
})
