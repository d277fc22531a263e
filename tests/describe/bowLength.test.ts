import { expect, test } from "vitest"
import { amoBowMm, stringLengthText } from "../../src/describe/bowLength"
import { drawWork } from "../../src/scene/drawWork"
import { drawnCompound, sceneOf } from "../scene/scenes"

test("a bow is called three inches longer than its string, in inches whatever the chosen unit", () => {
  // AMO standards (1987; FP-3, 2000): the string of a 66-inch bow is 63 in long.
  expect(amoBowMm(63 * 0.0254)).toBeCloseTo(66 * 25.4, 9)
  const units = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const
  expect(stringLengthText(1.651, units)).toBe("1651.0\u00a0mm, a 68.0-inch bow")
  expect(stringLengthText(1.6, { ...units, lengthUnit: "in" })).toBe("62.99\u00a0in, a 66.0-inch bow")
})

test("a compound, whose cams' strings are not modelled, has no string length", () => {
  const work = drawWork(sceneOf(drawnCompound()).bow)
  expect(work.ok && work.value.stringLength).toBeNull()
})
