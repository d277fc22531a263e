import { expect, test } from "vitest"
import { lockedFromPlumb, motionCsv, motionPointText } from "../../src/describe/motionText"
import { beginRun, clockOf, turnRun } from "../../src/panels/hills/motionRun"
import { swingMotions } from "../../src/scene/hills"
import { sceneOf } from "../picture/pictures"
import { extender, rigged, swing } from "../scene/documents"

const units = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const
const DEGREE = Math.PI / 180

const models = swingMotions(
  sceneOf(
    rigged({ lower: [swing({ frictionNmm: 3 })], back: [extender(), swing({ stemLengthMm: 70, bobMassG: 230 })] }),
  ),
).map(({ model }) => model!)
const [only] = models

test("a motion begins at rest, is read in words and saved a line a sample", () => {
  const run = beginRun([only!], 5, { toDeg: 30, degreesASecond: 60 })
  expect(clockOf(run).time.at(-1)).toBeGreaterThan(run.manoeuvre.end + 4.9)
  expect(motionPointText(run.traces, run.sum, 0, units)).toMatch(
    /^0\.00\u00a0s: bow 5° up, weight .*; nose-down .* free, .* locked\.$/,
  )
  const lines = motionCsv(["Lower swing weight"], run.traces, run.sum).trimEnd().split("\r\n")
  expect(lines).toHaveLength(clockOf(run).time.length + 1)
  expect(lines[0]).toBe(
    "time s,slope deg,weight from plumb deg,weight in the bow's frame deg,nose-down moment free N·m,nose-down moment locked N·m",
  )
  expect(Number(lines.at(-1)?.split(",")[1])).toBeCloseTo(30, 9)
})

test("several weights are said one by one, with the moment of all together", () => {
  const run = beginRun(models, 0, { toDeg: 20, degreesASecond: 50 })
  const at = 37
  const words = motionPointText(run.traces, run.sum, at, units)
  expect(words).toMatch(/: bow .* up, 1 .* plumb.*, 2 .* plumb.*; nose-down together .* free, .* locked\.$/)
  const together = run.traces[0]!.moment[at]! + run.traces[1]!.moment[at]!
  expect(words).toContain(`together ${together.toFixed(2).replace("-", "\u2212")}\u00a0N·m free`)
})

test("the table of several weights has columns of each and their sum at its end", () => {
  const run = beginRun(models, 0, { toDeg: 20, degreesASecond: 50 })
  const lines = motionCsv(["Lower swing weight", "Back swing weight"], run.traces, run.sum).split("\r\n")
  const headings = lines[0]!.split(",")
  expect(headings).toHaveLength(12)
  const row = lines[38]!.split(",").map(Number)
  const of = (heading: string) => row[headings.indexOf(heading)]!
  const free = "nose-down moment free N·m"
  expect(of(free)).toBeCloseTo(of(`Lower swing weight ${free}`) + of(`Back swing weight ${free}`), 12)
})

test("the locked weight keeps its angle in the bow, so it leaves plumb by as much as the bow turns", () => {
  const run = beginRun([{ ...only!, tilted: 0, upright: 1 }], 0, { toDeg: 20, degreesASecond: 30 })
  const [trace] = run.traces
  const last = trace!.time.length - 1
  expect(lockedFromPlumb(trace!, last) - lockedFromPlumb(trace!, 0)).toBeCloseTo(20 * DEGREE, 12)
})

test("a new aim in mid motion leaves what was before it as it was, for every weight", () => {
  const first = beginRun(models, 0, { toDeg: 30, degreesASecond: 50 })
  const turned = turnRun(first, 0.5, { toDeg: -20, degreesASecond: 50 })
  for (const weight of [0, 1]) {
    for (const index of [0, 7, 29]) {
      expect(turned.traces[weight]!.inBow[index]).toBeCloseTo(first.traces[weight]!.inBow[index]!, 9)
      expect(turned.traces[weight]!.slope[index]).toBe(first.traces[weight]!.slope[index])
    }
  }
  expect(turned.toDeg).toBe(-20)
  expect(clockOf(turned).slope.at(-1)).toBeCloseTo(-20 * DEGREE, 12)
})
