import { describe, expect, test } from "vitest"
import { gravityInBow, poseRotation } from "../../../src/core/balance"
import {
  downInPhone,
  readTaps,
  type Steadiness,
  steadier,
  tiltFrom,
  UNSTEADY,
  zeroAt,
} from "../../../src/core/measure/instruments"
import type { Vec3 } from "../../../src/core/solids"
import { expectNear } from "../near"
import { DEGREE, normal } from "./planted"

describe("which way is down in a phone", () => {
  test.each<[string, number, number, Vec3]>([
    ["flat on a table: out of its back", 0, 0, [0, 0, -1]],
    ["standing on its foot: towards its foot", 90, 0, [0, -1, 0]],
    ["lying on its right edge: towards its right", 0, 90, [1, 0, 0]],
    ["lying on its left edge: towards its left", 0, -90, [-1, 0, 0]],
    ["upside down: towards its top", -90, 0, [0, 1, 0]],
  ])("%s", (_, beta, gamma, down) => {
    downInPhone(beta, gamma).forEach((value, k) => {
      expect(value).toBeCloseTo(down[k]!, 14)
    })
  })

  test("is a unit vector at any angles", () => {
    expectNear([Math.hypot(...downInPhone(37, -23))], [1])
  })
})

describe("a phone flat on the bow's side", () => {
  /** The phone stands on its foot. Seen from the archer's right the bow's front is to the right; from the left, to the left. */
  const toPhone = (down: Vec3, side: "right" | "left"): Vec3 =>
    side === "right" ? down : [-down[0], down[1], -down[2]]

  test.each(["right", "left"] as const)("with its screen to the %s, reads slope and cant with their signs", (side) => {
    const zero = zeroAt(toPhone([0, -1, 0], side), side)!
    for (const [slope, cant] of [
      [0, 0],
      [31, 0],
      [-17, 5],
      [2, -23],
      [70, 11],
      [-3, 170],
    ] as const) {
      const down = gravityInBow(poseRotation(slope * DEGREE, cant * DEGREE))
      const tilt = tiltFrom(zero, toPhone(down, side))
      expect(tilt.slope).toBeCloseTo(slope * DEGREE, 12)
      expect(tilt.cant).toBeCloseTo(cant * DEGREE, 12)
    }
  })

  test("may be stuck on askew: the zeroing takes it out", () => {
    const skew = (v: Vec3): Vec3 => {
      const [c, s] = [Math.cos(0.4), Math.sin(0.4)]
      return [c * v[0] - s * v[1], s * v[0] + c * v[1], v[2]]
    }
    const zero = zeroAt(skew(toPhone([0, -1, 0], "right")), "right")!
    const down = gravityInBow(poseRotation(13 * DEGREE, -7 * DEGREE))
    const tilt = tiltFrom(zero, skew(toPhone(down, "right")))
    expect([tilt.slope, tilt.cant].map((angle) => angle / DEGREE)).toEqual([
      expect.closeTo(13, 10),
      expect.closeTo(-7, 10),
    ])
  })

  test("cannot be zeroed lying on its back", () => {
    expect(zeroAt([0, 0, -1], "right")).toBeNull()
    expect(zeroAt(downInPhone(20, 10), "left")).toBeNull()
  })
})

describe("a steady reading", () => {
  const feed = (readings: readonly (readonly [number, Vec3])[]): Steadiness =>
    readings.reduce((state, [at, down]) => steadier(state, { at, down }), UNSTEADY)
  const around = (count: number, every: number, wobble: (at: number) => number, start = 0) =>
    Array.from({ length: count }, (_, index) => {
      const at = start + index * every
      return [at, [Math.sin(wobble(at)), -Math.cos(wobble(at)), 0] as Vec3] as const
    })

  test("takes two seconds of rest, and not less", () => {
    expect(feed(around(40, 50, () => 0.1)).steady).toBe(false)
    const rest = feed(around(42, 50, () => 0.1))
    expect(rest.steady).toBe(true)
    expectNear(rest.mean!.slice(0, 2), [Math.sin(0.1), -Math.cos(0.1)])
  })

  test("is not there while the bow still swings by a degree, and is once it swings by a tenth", () => {
    const swing = (size: number) => (at: number) => 0.3 + size * DEGREE * Math.sin(at / 190)
    expect(feed(around(200, 50, swing(1))).steady).toBe(false)
    const quiet = feed(around(200, 50, swing(0.1)))
    expect(quiet.steady).toBe(true)
    expect(Math.abs(Math.atan2(quiet.mean![0], -quiet.mean![1]) - 0.3)).toBeLessThan(0.05 * DEGREE)
  })

  test("begins anew when the bow is moved, or after a page that slept", () => {
    const moved = [...around(60, 50, () => 0), ...around(20, 50, () => 0.5, 3000)]
    expect(feed(moved).steady).toBe(false)
    const slept = [...around(60, 50, () => 0), ...around(5, 50, () => 0, 60_000)]
    expect(feed(slept)).toMatchObject({ steady: false })
    expect(feed(slept).recent).toHaveLength(5)
  })

  test("needs more than a few readings, however slow the sensor", () => {
    expect(feed(around(4, 900, () => 0)).steady).toBe(false)
    expect(feed(around(14, 200, () => 0)).steady).toBe(true)
  })

  test("passes over what is no direction, and what comes out of order", () => {
    const rest = feed(around(42, 50, () => 0))
    expect(steadier(rest, { at: 9999, down: [Number.NaN, 0, 0] })).toBe(rest)
    expect(steadier(rest, { at: 9999, down: [0, 0, 0] })).toBe(rest)
    expect(steadier(rest, { at: 0, down: [1, 0, 0] })).toBe(rest)
  })
})

describe("taps", () => {
  const every = (count: number, period: number) => Array.from({ length: count }, (_, k) => 1000 + k * period)

  test("of a metronome give its time, without error", () => {
    const found = readTaps(every(11, 1370))!
    expect(found).toMatchObject({ count: 10, doubled: 0, missed: 0 })
    expectNear([found.seconds], [13.7], 1e-12)
    expect(found.error).toBeLessThan(1e-9)
  })

  test("left out or made twice do not shift the rest", () => {
    const taps = every(16, 1370).filter((_, index) => index !== 4 && index !== 9 && index !== 10)
    const found = readTaps([...taps.slice(0, 6), taps[5]! + 90, ...taps.slice(6)])!
    expect(found).toMatchObject({ count: 15, missed: 3, doubled: 1 })
    expect(Math.abs(found.seconds - 15 * 1.37)).toBeLessThan(0.001)
  })

  test("scattered as a thumb scatters them are within their stated error, two times in three", () => {
    const noise = normal(11)
    let within = 0
    const TRIALS = 300
    for (let trial = 0; trial < TRIALS; trial++) {
      const found = readTaps(every(16, 1370).map((at) => at + 60 * noise()))!
      if (Math.abs(found.seconds - 15 * 1.37) <= found.error!) within++
    }
    // Student's t of 14 degrees of freedom holds 66.6 %, give or take 2.7 % in 300.
    expect(within / TRIALS).toBeGreaterThan(0.58)
    expect(within / TRIALS).toBeLessThan(0.75)
  })

  test("too few say nothing, and of three no error can be told", () => {
    expect(readTaps([])).toBeNull()
    expect(readTaps([5])).toBeNull()
    expect(readTaps([5, 1400])).toBeNull()
    expect(readTaps([5, 5, 5])).toBeNull()
    expect(readTaps([0, 1400, 2810])).toMatchObject({ count: 2, error: null })
  })
})
