import fc from "fast-check"
import { expect, test } from "vitest"
import { roundedToSum } from "../../src/describe/roundedToSum"

const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0)

test("three thirds are shown so that they make one", () => {
  expect(roundedToSum([1 / 3, 1 / 3, 1 / 3], 2)).toEqual([0.34, 0.33, 0.33])
})

test("what was lost most comes back first", () => {
  expect(roundedToSum([2.2, 3.7, 5.4], 0)).toEqual([2, 4, 5])
})

test("numbers that need no rounding stay as they are", () => {
  expect(roundedToSum([0.1, 0.2, -0.7], 1)).toEqual([0.1, 0.2, -0.7])
})

test("nothing adds up to nothing", () => {
  expect(roundedToSum([], 2)).toEqual([])
})

test("the shown parts add up to the shown total, each off by less than one last digit, whatever the signs", () => {
  const number = fc.double({ min: -5000, max: 5000, noNaN: true })
  fc.assert(
    fc.property(fc.array(number, { maxLength: 40 }), fc.integer({ min: 0, max: 3 }), (values, decimals) => {
      const shown = roundedToSum(values, decimals)
      const unit = 10 ** -decimals
      expect(Math.abs(sum(shown) - sum(values))).toBeLessThanOrEqual(unit / 2 + 1e-6)
      for (const [index, value] of values.entries()) expect(Math.abs(shown[index]! - value)).toBeLessThan(unit + 1e-6)
    }),
  )
})
