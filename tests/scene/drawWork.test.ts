import { expect, test } from "vitest"
import { amoLengthMm, amoLengthText, drawCsv, drawPointText } from "../../src/describe/drawText"
import { drawWork, forcesAt, knownDrawWork } from "../../src/scene/drawWork"
import { drawCurve } from "../../src/scene/sweeps"
import { recurveBow, smallestDocument } from "./documents"
import { drawnCompound, sceneOf } from "./scenes"

const recurve = () => sceneOf({ ...smallestDocument(), bow: recurveBow() })

function workOf(bow: Parameters<typeof drawWork>[0]) {
  const work = drawWork(bow)
  if (!work.ok) throw new Error(work.errors[0]?.message)
  return work.value
}

const units = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const

test("a recurve's stored energy is the area under the draw curve of the report", () => {
  const { bow } = recurve()
  const curve = drawCurve(bow)
  if (!curve.ok) throw new Error("not solvable")
  let area = 0
  for (const [index, point] of curve.value.entries()) {
    const before = curve.value[index - 1]
    if (before) area += ((point.forceN + before.forceN) / 2) * ((point.drawMm - before.drawMm) / 1e3)
  }
  const work = workOf(bow)
  // The trapezoid rule over 40 steps of so smooth a curve is good to a thousandth.
  expect(Math.abs(work.storedJ / area - 1)).toBeLessThan(1e-3)
  expect(work.points.at(-1)?.drawMm).toBeCloseTo(bow.drawLengthMm, 9)
  const travel = (bow.drawLengthMm - bow.braceHeightMm) / 1e3
  expect(work.fullness).toBeCloseTo(work.storedJ / (bow.drawWeightLbf * 4.4482216152605 * travel), 9)
  expect(work.sketch).toBe(false)
})

test("a change that leaves the limbs alone keeps the curve, one of the limbs or the weight makes another", () => {
  const { bow } = recurve()
  const points = workOf(bow).points
  expect(workOf({ ...bow, nockHeightMm: bow.nockHeightMm + 7 }).points).toBe(points)
  const heavier = workOf({ ...bow, drawWeightLbf: bow.drawWeightLbf * 1.5 })
  expect(heavier.storedJ / workOf(bow).storedJ).toBeCloseTo(1.5, 9)
})

test("a curve is known once it has been solved for these very limbs, and a sketch always", () => {
  const { bow } = recurve()
  if (bow.kind !== "recurve") throw new Error("no recurve")
  const other = { ...bow, limbs: { ...bow.limbs, lengthMm: bow.limbs.lengthMm + 3 } }
  expect(knownDrawWork(other)).toBeNull()
  const work = workOf(other)
  expect(knownDrawWork(other)).toEqual({ ok: true, value: work })
  expect(knownDrawWork({ ...other, nockHeightMm: 7 })).not.toBeNull()
  expect(knownDrawWork({ ...other, braceHeightMm: other.braceHeightMm + 5 })).toBeNull()
  expect(knownDrawWork(sceneOf(drawnCompound()).bow)?.ok).toBe(true)
})

test("a compound's curve is called a sketch and has no fullness", () => {
  const work = workOf(sceneOf(drawnCompound()).bow)
  expect(work.sketch).toBe(true)
  expect(work.fullness).toBeNull()
  expect(work.storedJ).toBeGreaterThan(0)
})

test("the draw curve is saved with a line a point, unrounded", () => {
  const work = workOf(recurve().bow)
  const lines = drawCsv(work).trimEnd().split("\r\n")
  expect(lines).toHaveLength(work.points.length + 1)
  expect(lines[3]?.split(",").map(Number)).toEqual([
    work.points[2]?.drawMm,
    work.points[2]?.forceN,
    work.points[2]?.workJ,
  ])
})

test("AMO draw length counts 1.75 inches from the grip's pivot point", () => {
  expect(amoLengthMm(26.25 * 25.4)).toBeCloseTo(28 * 25.4, 9)
})

test("AMO draw length is said in inches too where lengths are in millimetres", () => {
  expect(amoLengthText(665, units)).toBe("709.5\u00a0mm (27.9\u00a0in)")
  expect(amoLengthText(665, { ...units, lengthUnit: "in" })).toBe("27.93\u00a0in")
})

test("no force at all is on the fingers at brace, also of a bow held to compare", () => {
  const work = workOf(recurve().bow)
  expect(work.points[0]?.forceN).toBe(0)
  expect(drawCsv(work).split("\r\n")[1]).toMatch(/,0,0$/)
  expect(forcesAt(work, [work.points[0]!.drawMm])).toEqual([0])
})

test("another bow's force stands at the same draws, and nowhere off its own way", () => {
  const points = [
    { drawMm: 200, forceN: 0, workJ: 0 },
    { drawMm: 300, forceN: 50, workJ: 2.5 },
    { drawMm: 500, forceN: 70, workJ: 14.5 },
  ]
  expect(forcesAt({ points }, [150, 200, 250, 300, 450, 500, 501])).toEqual([null, 0, 25, 50, 65, 70, null])
})

test("a bow held to compare has its own words and its own column", () => {
  const point = { drawMm: 500, forceN: 70, workJ: 14.5 }
  expect(drawPointText(point, units, 65)).toMatch(/ stored; the held bow 65\.0\u00a0N$/)
  expect(drawPointText(point, units, null)).toMatch(/ stored$/)
  const work = { points: [point], storedJ: 14.5, fullness: null, stringLength: null, sketch: true }
  const lines = drawCsv(work, [null]).split("\r\n")
  expect(lines[0]).toMatch(/,force of the held bow N$/)
  expect(lines[1]).toMatch(/,$/)
})
