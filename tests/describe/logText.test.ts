import { describe, expect, test } from "vitest"
import {
  comparedRows,
  impressionText,
  logCsv,
  readScores,
  scoresProblem,
  scoresText,
  triedFigures,
  triedTitle,
} from "../../src/describe/logText"
import { measuredDocument } from "../scene/measure/documents"
import { sceneOf } from "../scene/scenes"

const units = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const
const plain = (text: string) => text.replaceAll("\u00a0", " ")
const scene = sceneOf(measuredDocument())
const [first, second] = scene.log!

describe("scores", () => {
  test("are typed with commas, semicolons or spaces between them, and none are no scores", () => {
    expect(readScores("27, 25;28 9")).toEqual([27, 25, 28, 9])
    expect(readScores("  ")).toEqual([])
    expect(readScores(scoresText([27, 25.5]))).toEqual([27, 25.5])
  })

  test("in words or below nothing are none", () => {
    expect(readScores("27, nine")).toBeNull()
    expect(readScores("-3")).toBeNull()
    expect(scoresProblem("27, nine")).toBe("Scores are numbers with commas between them.")
    expect(scoresProblem("27, 9")).toBeNull()
  })

  test("that may be one with its thousands apart or two are refused, with both ways of writing them", () => {
    for (const typed of ["1,250", "1 250", "9; 1,250", "1,250 27"]) expect(readScores(typed), typed).toBeNull()
    expect(scoresProblem("27; 1,250")).toBe(
      "“1,250” can be read two ways: write 1250 for one score, or 1; 250 for two.",
    )
    expect([readScores("1250"), readScores("1; 250"), readScores("1, 250")]).toEqual([[1250], [1, 250], [1, 250]])
  })

  test("that cannot be one, being too high for it or several with commas alone, are as many as they look", () => {
    expect(readScores("270,265")).toEqual([270, 265])
    expect(readScores("9,1,250,7")).toEqual([9, 1, 250, 7])
    expect(readScores("1,25")).toEqual([1, 25])
  })

  test("where a comma is the decimal mark it stands inside a score, or parts two with a space after it", () => {
    expect(readScores("27,5 25;28", ",")).toEqual([27.5, 25, 28])
    expect(readScores("27, 25,", ",")).toEqual([27, 25])
    expect(readScores("1,250", ",")).toEqual([1.25])
    expect(readScores("27,25,28", ",")).toBeNull()
    expect(scoresProblem("27,25,28", ",")).toBe("Scores are numbers with spaces or semicolons between them.")
    expect(scoresProblem("1\u00a0250", ",")).toContain("write 1250 for one score")
    expect(scoresText([27.5, 25], ",")).toBe("27,5; 25")
    expect(readScores(scoresText([27.5, 1, 250], ","), ",")).toEqual([27.5, 1, 250])
  })
})

test("an entry is called by its number, its name and its date, and told by what was noted", () => {
  expect(triedTitle(first!, 0)).toBe("Setup 1: first (2026-05-17)")
  expect(triedTitle(second!, 1)).toBe("Setup 2")
  expect(plain(impressionText(first!, units))).toBe(
    "felt 4 of 5: steady, slow · scores 27, 25, 28, total 80 · group 130.0 mm",
  )
  expect(impressionText(second!, units)).toBe("")
  expect(impressionText({ ...second!, rating: 2, scores: [0.1, 0.2] }, units)).toBe(
    "felt 2 of 5 · scores 0.1, 0.2, total 0.3",
  )
})

test("two setups are compared number by number, the change with its sign", () => {
  const rows = comparedRows(triedFigures(scene, second!.rig)!, triedFigures(scene, first!.rig)!, units)
  expect(rows.map(({ label }) => label)).toEqual([
    "Balance point ahead of grip, mm",
    "Balance point above grip, mm",
    "Balance point to the right, mm",
    "Mass, g",
    "Net at full draw, N·m",
    "Turn resistance, pitch, kg·m²",
    "Turn resistance, yaw, kg·m²",
    "Turn resistance, roll, kg·m²",
  ])
  // By hand from the rig: a rod of 123 g and three discs of 28 g.
  expect(rows[3]!.change).toBe("+207")
  expect(rows[0]!.change).toMatch(/^\+\d/)
  expect(rows[4]!.change).toMatch(/^\u2212\d/)
  const same = comparedRows(triedFigures(scene, first!.rig)!, triedFigures(scene, first!.rig)!, units)
  expect(same.map(({ change }) => change).slice(0, 4)).toEqual(["0.0", "0.0", "0.0", "0"])
})

test("the log as a file has a line a setup, its words quoted and its numbers in the report's units", () => {
  const lines = logCsv({ ...scene, log: [{ ...first!, note: 'windy, "gusts"' }, second!] }).split("\r\n")
  expect(lines).toHaveLength(4)
  expect(lines[0]).toBe(
    'setup,date,name,"felt, 1 to 5",feel,scores,total,group mm,"Balance point ahead of grip, mm","Balance point above grip, mm","Balance point to the right, mm","Mass, g","Net at full draw, N·m","Turn resistance, pitch, kg·m²","Turn resistance, yaw, kg·m²","Turn resistance, roll, kg·m²",note',
  )
  expect(lines[1]).toMatch(/^1,2026-05-17,first,4,"steady, slow","27, 25, 28",80,130,.*,"windy, ""gusts"""$/)
  expect(lines[2]).toMatch(/^2,,,,,,,,/)
})

test("the numbers of the log as a file are those of the setups to twelve digits, without the noise of sums", () => {
  const heavy = triedFigures(scene, first!.rig)!
  const cells = logCsv({ ...scene, log: [{ ...first!, name: "=2+3", note: "-7" }] }).split("\r\n")[1]!
  expect(cells).toMatch(/^1,2026-05-17,'=2\+3,.*,'-7$/)
  const numbers = cells.split(",").filter((cell) => /^-?\d+\.?\d*(e-?\d+)?$/.test(cell))
  for (const number of numbers) expect(number.replace(/^-?0?\.?0*|e.*$|\./g, "").length).toBeLessThanOrEqual(12)
  for (const value of [heavy.massG, heavy.centreMm[0], heavy.fullDraw.netLiftNm])
    expect(numbers).toContain(String(Number(value.toPrecision(12))))
})
