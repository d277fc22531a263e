import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { fixed, pairs, roundToSum, shortened, signed, table } from "../../src/describe/reportTable"

describe("numbers as shown", () => {
  test.each<[number, number, string, string]>([
    [2.345, 1, "2.3", "+2.3"],
    [-2.345, 2, "-2.35", "-2.35"],
    [-0.04, 1, "0.0", "0.0"],
    [0, 3, "0.000", "0.000"],
    [0.05, 0, "0", "0"],
  ])("%d with %d decimals: %s, signed %s", (value, decimals, plain, withSign) => {
    expect(fixed(value, decimals)).toBe(plain)
    expect(signed(value, decimals)).toBe(withSign)
  })
})

describe("rounding to a sum", () => {
  test("lets the largest remainders go up until the total is met", () => {
    expect(roundToSum([33.34, 33.34, 33.34], 1)).toEqual([33.4, 33.3, 33.3])
    expect(roundToSum([0.26, 0.27, 0.28], 1)).toEqual([0.2, 0.3, 0.3])
    expect(roundToSum([-0.26, -0.27, -0.28], 1)).toEqual([-0.2, -0.3, -0.3])
    expect(roundToSum([1.5, 2.25], 0)).toEqual([2, 2])
  })

  test("rounds the total to the nearest, not down", () => {
    expect(roundToSum([0.45, 0.33], 0)).toEqual([1, 0])
    expect(roundToSum([0.3, 0.1], 0)).toEqual([0, 0])
  })

  test("leaves alone what needs no rounding", () => {
    expect(roundToSum([60, 59.99999999999, 0.06, 0.06], 1)).toEqual([60, 60, 0.1, 0])
    expect(roundToSum([], 1)).toEqual([])
  })

  test("always adds up to the rounded total, each value within one unit of its last place", () => {
    const value = fc.double({ min: -5000, max: 5000, noNaN: true })
    fc.assert(
      fc.property(fc.array(value, { maxLength: 30 }), fc.nat(3), (values, decimals) => {
        const unit = 10 ** -decimals
        const shown = roundToSum(values, decimals)
        shown.forEach((each, index) => {
          // 1e-7 of a unit is what counts as noise of float64.
          expect(Math.abs(each - values[index]!)).toBeLessThan(unit * (1 + 1e-7))
        })
        const sum = (list: readonly number[]) => list.reduce((total, each) => total + each, 0)
        expect(Math.abs(sum(shown) - sum(values))).toBeLessThanOrEqual(unit * (0.5 + 1e-5))
      }),
      { seed: 1103, numRuns: 500 },
    )
  })
})

test("a table has its first column to the left, numbers to the right, and no blanks at line ends", () => {
  expect(
    table(
      ["part", "g", ""],
      [
        ["a", "2.0", ""],
        ["longer", "300.0", "x"],
      ],
    ),
  ).toEqual(["  part        g", "  a         2.0", "  longer  300.0  x"])
})

test("pairs have their values in one column", () => {
  expect(
    pairs([
      ["a", "2"],
      ["longer", "3"],
    ]),
  ).toEqual(["  a       2", "  longer  3"])
})

test("a name of up to 44 letters stays, a longer one keeps both its ends", () => {
  const letters = "0123456789".repeat(5)
  expect(shortened(letters.slice(0, 44))).toBe(letters.slice(0, 44))
  const short = shortened(letters)
  expect([...short]).toHaveLength(44)
  expect(short.startsWith("0123456789") && short.endsWith("0123456789") && short.includes("…")).toBe(true)
  expect(shortened("🏹".repeat(50))).toBe(`${"🏹".repeat(22)}…${"🏹".repeat(21)}`)
})
