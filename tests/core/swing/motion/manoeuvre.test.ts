import { expect, test } from "vitest"
import { holdStill, type Manoeuvre, raise, raiseOn } from "../../../../src/core/swing/motion"
import { DEGREE } from "./pendulums"

const at = (manoeuvre: Manoeuvre, time: number) => {
  const now = { slope: 0, rate: 0, acceleration: 0 }
  manoeuvre.at(time, now)
  return now
}

/** Difference quotient step, s, and what it is worth here, rad/s and rad/s². */
const STEP = 1e-5
const QUOTIENT = 1e-6

test("raising goes from rest to rest and its largest rate is the one asked for, in the middle", () => {
  const manoeuvre = raise(-7 * DEGREE, 23 * DEGREE, 50 * DEGREE)
  expect(at(manoeuvre, 0)).toEqual({ slope: -7 * DEGREE, rate: 0, acceleration: 0 })
  expect(at(manoeuvre, manoeuvre.end)).toEqual({ slope: 23 * DEGREE, rate: 0, acceleration: 0 })
  expect(at(manoeuvre, manoeuvre.end + 3)).toEqual({ slope: 23 * DEGREE, rate: 0, acceleration: 0 })
  expect(at(manoeuvre, manoeuvre.end / 2).rate).toBeCloseTo(50 * DEGREE, 12)
  for (let part = 0; part <= 50; part++) {
    expect(at(manoeuvre, (manoeuvre.end * part) / 50).rate).toBeLessThanOrEqual(50 * DEGREE * (1 + 1e-12))
  }
})

test("lowering has a negative rate of the same size", () => {
  const manoeuvre = raise(23 * DEGREE, -7 * DEGREE, 50 * DEGREE)
  expect(at(manoeuvre, manoeuvre.end / 2).rate).toBeCloseTo(-50 * DEGREE, 12)
})

test.each([
  ["raise", raise(0.2, 0.9, 1.3)],
  ["raise on", raiseOn(raise(0.2, 0.9, 1.3), 0.37, -0.5, 1.7)],
])("the rate and acceleration of %s are the derivatives of its slope", (_, manoeuvre) => {
  for (const time of [0.41, 0.53, 0.71, 0.97]) {
    const [before, now, after] = [at(manoeuvre, time - STEP), at(manoeuvre, time), at(manoeuvre, time + STEP)]
    expect(Math.abs((after.slope - before.slope) / (2 * STEP) - now.rate)).toBeLessThanOrEqual(QUOTIENT)
    expect(Math.abs((after.rate - before.rate) / (2 * STEP) - now.acceleration)).toBeLessThanOrEqual(QUOTIENT)
  }
})

test("a new aim in mid-motion goes on with the same slope, rate and acceleration, and ends at rest", () => {
  const first = raise(0.1, 0.7, 1.1)
  const second = raiseOn(first, 0.4, -0.3, 0.9)
  const [left, taken] = [at(first, 0.4), at(second, 0.4)]
  expect(taken.slope).toBeCloseTo(left.slope, 13)
  expect(taken.rate).toBeCloseTo(left.rate, 13)
  expect(taken.acceleration).toBeCloseTo(left.acceleration, 13)
  expect(at(second, second.end)).toEqual({ slope: -0.3, rate: 0, acceleration: 0 })
  const justBefore = at(second, second.end - 1e-6)
  expect(Math.abs(justBefore.slope + 0.3)).toBeLessThanOrEqual(1e-9)
  expect(Math.abs(justBefore.rate)).toBeLessThanOrEqual(1e-9)
})

test("a raise of nothing is a bow held still from the start", () => {
  expect(raise(0.3, 0.3, 2).end).toBe(0)
  expect(at(raise(0.3, 0.3, 2), 0)).toEqual(at(holdStill(0.3), 0))
})

test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("a rate of %d is refused", (rate) => {
  expect(() => raise(0, 1, rate)).toThrow(RangeError)
})

test("a slope that is not a number is refused", () => {
  expect(() => raise(Number.NaN, 1, 2)).toThrow(RangeError)
  expect(() => raise(0, Number.POSITIVE_INFINITY, 2)).toThrow(RangeError)
})
