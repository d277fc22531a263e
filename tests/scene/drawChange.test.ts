import { expect, test } from "vitest"
import { whySentence, whyTable } from "../../src/describe/drawText"
import { type DrawChange, drawChange } from "../../src/scene/drawChange"
import { evaluate } from "../../src/scene/evaluate"
import type { Scene } from "../../src/scene/schema"
import { fullDocument, recurveBow, smallestDocument } from "./documents"
import { drawnCompound, hungDocument, sceneOf } from "./scenes"

const recurve = sceneOf({ ...smallestDocument(), bow: recurveBow() })
const scenes: readonly (readonly [string, Scene])[] = [
  ["a recurve", recurve],
  ["a compound with a rig", sceneOf(fullDocument())],
  ["a compound posed on a slope", sceneOf(drawnCompound())],
  ["a canted recurve with swing weights", sceneOf(hungDocument())],
]
const shares = ["brace", "limbs", "string", "arrow", "pull"] as const
const units = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const

function changeOf(scene: Scene): DrawChange {
  const evaluation = evaluate(scene)
  if (!evaluation.ok) throw new Error(evaluation.errors[0]?.message)
  const change = drawChange(scene, evaluation.value)
  if (!change.ok) throw new Error(change.errors[0]?.message)
  return change.value
}

test.each(scenes)("the shares of %s add up to its balance point and its net lift at full draw", (_, scene) => {
  const change = changeOf(scene)
  const evaluation = evaluate(scene)
  if (!evaluation.ok) throw new Error("not solvable")
  const { fullDraw } = evaluation.value
  const total = (of: "forward" | "raising") => shares.reduce((sum, key) => sum + change[key][of], 0)
  expect(Math.abs(total("forward") - fullDraw.centre[0])).toBeLessThan(1e-9)
  expect(Math.abs(total("raising") - fullDraw.netLift)).toBeLessThan(1e-9)
  expect(change.drawn).toEqual({ forward: fullDraw.armForward, raising: fullDraw.netLift })
})

test("the arrow's share is its moment about the old balance point over the new mass", () => {
  const scene = sceneOf(fullDocument())
  const { arrow, drawLengthMm } = scene.bow
  const change = changeOf(scene)
  const evaluation = evaluate(scene)
  if (!evaluation.ok) throw new Error("not solvable")
  const middle = (arrow.lengthMm / 2 - drawLengthMm) / 1e3
  const share = ((arrow.massG / 1e3) * (middle - change.brace.forward)) / evaluation.value.fullDraw.mass
  expect(change.arrow.forward).toBeCloseTo(share, 12)
  expect(change.arrow.raising).toBeCloseTo(-(arrow.massG / 1e3) * 9.80665 * middle, 12)
})

test("drawing moves a recurve's limbs and string back, so both raise the front", () => {
  const { limbs, string } = changeOf(recurve)
  expect(limbs.forward).toBeLessThan(0)
  expect(limbs.raising).toBeGreaterThan(0)
  expect(string.forward).toBeLessThan(0)
  expect(string.raising).toBeGreaterThan(0)
})

test.each(scenes)("the table of %s adds up digit by digit in every unit", (_, scene) => {
  const change = changeOf(scene)
  for (const lengthUnit of ["mm", "in"] as const) {
    for (const forceUnit of ["N", "lbf"] as const) {
      const { rows } = whyTable(change, { massUnit: "g", lengthUnit, forceUnit })
      const read = (text: string) => Number(text.replace("\u2212", "-").replace("+", "") || 0)
      for (const of of ["forward", "raising"] as const) {
        const sum = rows.slice(0, -1).reduce((all, row) => all + read(row[of]), 0)
        expect(sum).toBeCloseTo(read(rows.at(-1)![of]), 9)
      }
    }
  }
})

test("the line of pull moves no mass and says so by an empty cell", () => {
  const pull = whyTable(changeOf(sceneOf(fullDocument())), units).rows.find(({ name }) => name === "Line of pull")
  expect(pull?.forward).toBe("")
})

test("the sentence names the largest cause with its sign", () => {
  const none = { forward: 0, raising: 0 }
  const change = { ...changeOf(sceneOf(fullDocument())), limbs: none, string: none, arrow: { forward: 0, raising: 2 } }
  expect(whySentence({ ...change, pull: { forward: 0, raising: -5 } }, units)).toBe(
    "Mostly the line of pull: it lowers the front by 5.00\u00a0N·m; all else together raises it by 2.00\u00a0N·m.",
  )
})
