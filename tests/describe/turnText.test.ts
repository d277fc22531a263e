import { expect, test } from "vitest"
import { multipleScale, multipleText } from "../../src/describe/turnText"

test("turn resistance is said as a multiple of the bare bow's", () => {
  expect(multipleText(0.175, 0.07)).toBe("2.50× the bare bow")
})

test("a bare bow without resistance gives a dash, not an endless number", () => {
  expect(multipleText(0.3, 0)).toBe("–")
})

test("the scale ends at or beyond the largest multiple and doubles from three", () => {
  expect([0.2, 3, 3.1, 7, 23].map(multipleScale)).toEqual([3, 3, 6, 12, 24])
  expect(multipleScale(Number.POSITIVE_INFINITY)).toBeGreaterThan(1000)
})
