import { expect, test } from "vitest"
import { raise, sumMoments, traceMotion } from "../../../../src/core/swing/motion"
import { bowSwing, DEGREE, FRAME, hung } from "./pendulums"

const up = raise(-5 * DEGREE, 23 * DEGREE, 70 * DEGREE)
const follow = (model: ReturnType<typeof hung>, manoeuvre = up) => traceMotion(model, manoeuvre, 3, FRAME)

const left = hung(bowSwing(), { hinge: [0.03, -0.11, -0.13], damping: 0.003 })
const right = hung(bowSwing(), { hinge: [0.03, -0.11, 0.13], damping: 0.003 })
const other = hung(bowSwing({ stemLength: 0.07, bobMass: 0.23 }), { hinge: [-0.05, -0.02, 0.07], friction: 0.011 })

test("two like weights beside each other bring what one of twice the mass brings", () => {
  const double = hung(bowSwing({ stemMass: 0.038, bobMass: 0.302 }), { hinge: [0.03, -0.11, 0], damping: 0.006 })
  const sum = sumMoments([follow(left), follow(right)])
  const one = follow(double)
  for (const key of ["moment", "weightMoment", "lockedMoment", "lockedWeightMoment"] as const) {
    sum[key].forEach((value, index) => {
      expect(Math.abs(value - one[key][index]!)).toBeLessThan(1e-9)
    })
  }
})

test("unlike weights add up sample by sample, in any order", () => {
  const traces = [follow(left), follow(other)]
  const sum = sumMoments(traces)
  const back = sumMoments([...traces].reverse())
  for (const index of [0, 17, 59, 113, 180]) {
    expect(sum.moment[index]).toBeCloseTo(traces[0]!.moment[index]! + traces[1]!.moment[index]!, 14)
    expect(sum.lockedMoment[index]).toBeCloseTo(traces[0]!.lockedMoment[index]! + traces[1]!.lockedMoment[index]!, 14)
    expect(back.moment[index]).toBeCloseTo(sum.moment[index]!, 14)
  }
})

test("one weight alone is its own sum", () => {
  const trace = follow(other)
  expect(sumMoments([trace]).moment).toEqual(trace.moment)
})

test("nothing, another way of raising, or another length of time cannot be added", () => {
  expect(() => sumMoments([])).toThrow(RangeError)
  const slower = follow(other, raise(-5 * DEGREE, 23 * DEGREE, 50 * DEGREE))
  expect(() => sumMoments([follow(left), slower])).toThrow(RangeError)
  expect(() => sumMoments([follow(left), traceMotion(other, up, 2, FRAME)])).toThrow(RangeError)
})
