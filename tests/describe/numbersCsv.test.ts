import { expect, test } from "vitest"
import { numbersCsv } from "../../src/describe/numbersCsv"
import { evaluate } from "../../src/scene/evaluate"
import { figuresOf } from "../../src/scene/figures"
import { fullScene } from "../state/benches"

const evaluated = () => {
  const evaluation = evaluate(fullScene())
  if (!evaluation.ok) throw new Error("the full scene cannot be strung")
  return evaluation.value
}
/** Cells of a table without quoted commas in the columns looked at. */
const row = (csv: string, key: string) => csv.split("\r\n").find((line) => line.startsWith(`${key},`))

test("every number stands once under the report's key, unrounded, with its unit and its ± where there is one", () => {
  const evaluation = evaluated()
  const csv = numbersCsv(evaluation, { massG: 2.5, "centreMm.up": Number.POSITIVE_INFINITY })
  const figures = figuresOf(evaluation)
  expect(csv.split("\r\n")[0]).toBe('key,what,value,unit,"plus or minus, 95 %"')
  expect(row(csv, "massG")).toBe(`massG,Mass,${figures.massG},g,2.5`)
  expect(row(csv, "centreMm.up")).toBe(`centreMm.up,Balance point above grip,${figures.centreMm[1]},mm,`)
  expect(row(csv, "inertiaGrip.yaw")).toContain(`${figures.inertiaGrip[1][1]},kg·m²,`)
  expect(row(csv, "fullDraw.netLiftNm")).toContain(`${figures.fullDraw.netLiftNm},N·m,`)
  const keys = csv.split("\r\n").map((line) => line.split(",")[0])
  expect(new Set(keys).size).toBe(keys.length)
})

test("the parts' masses add up to the whole", () => {
  const evaluation = evaluated()
  const csv = numbersCsv(evaluation, null)
  const masses = [...csv.matchAll(/^parts\/[^\n]*\.massG,.*?,([\d.e-]+),g,/gm)].map(([, mass]) => Number(mass))
  expect(masses.length).toBe(evaluation.now.parts.length)
  expect(masses.reduce((sum, mass) => sum + mass, 0)).toBeCloseTo(figuresOf(evaluation).massG, 6)
})
