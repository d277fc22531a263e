import { expect, test } from "vitest"
import { besideSentence, besideText } from "../../src/describe/compareText"

const metric = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const
const imperial = { massUnit: "oz", lengthUnit: "in", forceUnit: "lbf" } as const

test("the other number and the difference add up to the present one as both are shown", () => {
  // 62.04 is shown as 62.0 and 57.96 as 58.0: the difference is 4.0, though it is nearer to 4.1.
  expect(besideText(62.04, 57.96, "length", metric)).toEqual({ other: "58.0", change: "+4.0" })
  expect(besideText(57.96, 62.04, "length", metric)).toEqual({ other: "62.0", change: "−4.0" })
  expect(besideText(62.04, 57.96, "length", imperial)).toEqual({ other: "2.28", change: "+0.16" })
  expect(besideText(2437, 2437.3, "mass", metric)).toEqual({ other: "2437", change: "±0" })
})

test("the sentence says which of the two is held, and whether they differ at all", () => {
  expect(besideSentence({ other: "58.0", change: "+4.0" })).toBe("held 58.0, change +4.0")
  expect(besideSentence({ other: "2437", change: "±0" })).toBe("held 2437, the same")
  expect(besideSentence({ other: "58.0", change: "+4.0" }, "there")).toBe("there 58.0, change +4.0")
})
