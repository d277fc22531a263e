import { expect, test } from "vitest"
import { gaugePlace } from "../../src/panels/TargetGauge"

test("the middle of the target is the middle of the gauge, and its ends stand a third from the gauge's", () => {
  expect(gaugePlace(60, [40, 80])).toBe(66)
  expect(gaugePlace(40, [40, 80])).toBe(44)
  expect(gaugePlace(80, [40, 80])).toBe(88)
})

test("a value far off is held at the gauge's end", () => {
  expect(gaugePlace(-500, [40, 80])).toBe(6)
  expect(gaugePlace(900, [40, 80])).toBe(126)
})

test("a target of a single value still has a place for it", () => {
  expect(gaugePlace(30, [30, 30])).toBe(66)
  expect(gaugePlace(30.5, [30, 30])).toBe(88)
})

test("what may be off by any amount reaches from end to end", () => {
  expect(gaugePlace(Number.NEGATIVE_INFINITY, [40, 80])).toBe(gaugePlace(-1e9, [40, 80]))
  expect(gaugePlace(Number.POSITIVE_INFINITY, [40, 80])).toBe(gaugePlace(1e9, [40, 80]))
})
