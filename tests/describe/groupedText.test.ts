import { expect, test } from "vitest"
import { groupedProblem } from "../../src/describe/groupedText"

test("a comma before just three digits is refused, with both numbers it could be", () => {
  expect(groupedProblem("2,650")).toBe("“2,650” can be read two ways; write 2650, or 2.65 with a decimal point")
  expect(groupedProblem(" -12,345 g")).toContain("write -12345, or -12.345 with")
  expect(groupedProblem("\u2212123,000")).toContain("write \u2212123000, or \u2212123.0 with")
})

test("a comma that can only be the decimal one is no problem, nor is none", () => {
  for (const text of ["2,65", "0,650", "2,6500", "1234,567", "2650", "2.650", "", "two"])
    expect(groupedProblem(text)).toBeNull()
})
