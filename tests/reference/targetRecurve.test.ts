/** The shipped 68-inch recurve against what is known of real ones: its length, its draw curve and its energy. */
import { readFileSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, test } from "vitest"
import { drawCurve } from "../../src/core/limbs"
import { amoBowMm } from "../../src/describe/bowLength"
import { drawWork } from "../../src/scene/drawWork"
import { readScene } from "../../src/scene/parse"
import { bracedLimbs } from "../../src/scene/recurvePlace"
import type { RecurveBow } from "../../src/scene/schema"

const file = join(import.meta.dirname, "../../scenes/target-recurve-68-inch.json")

function shipped(): RecurveBow {
  const scene = readScene(JSON.parse(readFileSync(file, "utf8")))
  if (!scene.ok) throw new Error(JSON.stringify(scene.errors))
  const { bow } = scene.value
  if (bow.kind !== "recurve") throw new Error("not a recurve")
  return bow
}

const bow = shipped()
/** A limbs' object of its own: what was solved is kept by it. */
const tipOnly: RecurveBow = { ...bow, limbs: { ...bow.limbs }, stringWrap: false }

const workOf = (of: RecurveBow) => {
  const work = drawWork(of)
  if (!work.ok) throw new Error(JSON.stringify(work.errors))
  return work.value
}
const limbsOf = (of: RecurveBow) => {
  const braced = bracedLimbs(of)
  if (!braced.ok) throw new Error(JSON.stringify(braced))
  return braced.value
}

describe("the shipped 68-inch recurve", () => {
  // AMO standards (1987; FP-3, 2000): bow length is the length of its string's master and 3 in, to 1/16 in.
  test("has the string of a 68-inch bow, to the sixteenth of an inch that a string is made to", () => {
    expect(Math.abs(amoBowMm(workOf(bow).stringLength!) - 68 * 25.4)).toBeLessThan(25.4 / 16)
  })

  test("has its string on the limbs at brace, and off them before full draw", () => {
    expect(bow.stringWrap).toBe(true)
    const { brace, full } = limbsOf(bow)
    expect(brace.wrappedLength).toBeGreaterThan(0.02)
    expect(brace.wrappedLength).toBeLessThan(0.08)
    expect(full.wrappedLength).toBe(0)
  })

  // Tuijn and Kooi, European Journal of Physics 13 (1992), Table I: three recurves of 66 to 70 inches store 0.581 to
  // 0.595 of effective force times effective draw (worked out from the table's energy, force and draw).
  test("fills its draw curve as measured recurves do: W/(F·draw) 0.57 to 0.60", () => {
    const { fullness } = workOf(bow)
    expect(fullness).toBeGreaterThan(0.57)
    expect(fullness).toBeLessThan(0.6)
  })

  test("is less full without the string on the limbs, and as full then as any recurve pulled at its tips", () => {
    const { fullness } = workOf(tipOnly)
    expect(limbsOf(tipOnly).brace.wrappedLength).toBe(0)
    expect(fullness).toBeLessThan(workOf(bow).fullness! - 0.003)
    expect(fullness).toBeGreaterThan(0.55)
  })

  test.each([
    ["with", bow],
    ["without", tipOnly],
  ])("stores in its limbs the work of the draw force to 0.1 %%, %s the string on the limbs", (_, of) => {
    const curve = drawCurve(limbsOf(of))
    if (!curve.ok) throw new Error(curve.reason)
    const { work, energy } = curve.value.at(-1)!
    expect(Math.abs(work / energy - 1)).toBeLessThan(1e-3)
    expect(Math.abs(workOf(of).storedJ / energy - 1)).toBeLessThan(1e-3)
  })

  // The same table: bows of 34 to 40 lbf store 42.6 to 50.3 J. Energy goes with force times draw; this one lies between.
  test("stores the energy of a bow of its weight", () => {
    expect(workOf(bow).storedJ).toBeGreaterThan(40)
    expect(workOf(bow).storedJ).toBeLessThan(51)
  })
})
