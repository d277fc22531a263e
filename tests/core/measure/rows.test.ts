import { describe, expect, test } from "vitest"
import { bodyOf, hangingAttitude, type Observation, rowsOf, vectorOf } from "../../../src/core/measure"
import { gravityInBow, poseRotation } from "../../../src/core/balance"
import { expectNear } from "../near"
import { bareRiser, centreOf, DEGREE, hang, limbs, riser, session, swing, twist, weigh } from "./planted"

const STEP = 1e-6
/** Of a central difference, relative (at least to one): truncation 1e-10, rounding over the step 1e-10, with room. */
const DIFFERENCE_TOLERANCE = 1e-7

const assumed = { mass: 1.1, centre: [0.03, 0.011, -0.005], squares: [0.03, 0.003, 0.025] } as const

describe("every row's gradient is the derivative of what it models", () => {
  const seen = session(riser, limbs)
  test.each(seen.map((one, index): [string, Observation] => [`${one.kind} ${index}`, one]))("of %s", (_, one) => {
    const vector = vectorOf(assumed)
    const at = (k: number, step: number) =>
      rowsOf(one, bodyOf(vector.map((value, i) => (i === k ? value + step : value)))).map(({ residual }) => -residual)
    const rows = rowsOf(one, assumed)
    vector.forEach((_, k) => {
      const [above, below] = [at(k, STEP), at(k, -STEP)]
      rows.forEach(({ gradient }, i) => {
        const off = Math.abs(gradient[k]! - (above[i]! - below[i]!) / (2 * STEP))
        expect(off / Math.max(1, Math.abs(gradient[k]!))).toBeLessThan(DIFFERENCE_TOLERANCE)
      })
    })
  })
})

test("readings without noise leave nothing over at the body they were made of", () => {
  const misses = session(riser, limbs).flatMap((one) => rowsOf(one, riser).map(({ residual }) => residual))
  expect(misses).toHaveLength(12)
  for (const miss of misses) expect(Math.abs(miss)).toBeLessThan(1e-14)
})

test("a bow hung from a point has its balance point straight below it", () => {
  for (const at of [
    [0.3, 0.2, 0.1],
    [-0.2, -0.7, 0.05],
    [0.7, -0.07, -0.01],
  ] as const) {
    const centre = centreOf(riser, limbs)
    const { slope, cant } = hangingAttitude(at, centre)!
    const down = gravityInBow(poseRotation(slope, cant))
    const apart = Math.hypot(centre[0] - at[0], centre[1] - at[1], centre[2] - at[2])
    expectNear(
      down,
      centre.map((value, k) => (value - at[k]!) / apart),
    )
  }
  expect(hangingAttitude([0.2, 0.3, 0.5], [0.2, 0.3, 0.5])).toBeNull()
})

test("a plumb line read wrong by an angle counts for more the further below the point the balance point is", () => {
  const hook = { tiltError: 2 * DEGREE, pointError: 0.003 }
  const errors = [0.11, 0.7].map((up) => rowsOf(hang(riser, bareRiser, [0.019, up - 0.007, 0.003], hook), riser)[0]!)
  expectNear(
    errors.map(({ below }) => below!),
    [0.11, 0.7],
  )
  expectNear(
    errors.map(({ error }) => error),
    [Math.hypot(0.003, 0.11 * 2 * DEGREE), Math.hypot(0.003, 0.7 * 2 * DEGREE)],
  )
})

test("a bow balanced on top of a point is as good as one hung below it", () => {
  const centre = centreOf(riser, limbs)
  const on = { ...hang(riser, limbs, [centre[0], centre[1] - 0.05, centre[2]], { tiltError: 0.02, pointError: 0.002 }) }
  const balanced = { ...on, kind: "hang", slope: 0, cant: 0 } as Observation
  const [forward, side] = rowsOf(balanced, riser)
  expectNear([forward!.below!], [-0.05], 1e-12)
  expectNear(
    [forward!.residual, side!.residual].map((miss) => 1 + miss),
    [1, 1],
  )
})

test("a hang of which only the slope was read says nothing across", () => {
  const full = hang(riser, limbs, [0.1, 0.3, 0], { tiltError: 0.01, pointError: 0.001 })
  expect(rowsOf({ ...full, cant: null } as Observation, riser).map(({ what }) => what)).toEqual(["forward"])
})

test("a wrong pivot point, line or watch widens the period's error as it moves the period", () => {
  const from = [0.05, 0.31, 0] as const
  const watch = { periodError: 0.002, pointError: 0.005 }
  const [row] = rowsOf(swing(riser, limbs, from, [0, 0, 1], watch), riser)
  const centre = centreOf(riser, limbs)
  const far = Math.hypot(from[0] - centre[0], from[1] - centre[1])
  const moved = (by: number) =>
    rowsOf(
      {
        ...swing(riser, limbs, from, [0, 0, 1], watch),
        at: [
          centre[0] + ((from[0] - centre[0]) * (far + by)) / far,
          centre[1] + ((from[1] - centre[1]) * (far + by)) / far,
          0,
        ],
      } as Observation,
      riser,
    )[0]!.residual
  const rate = (moved(1e-6) - moved(-1e-6)) / 2e-6
  expectNear([row!.error], [Math.hypot(0.002, 0.005 * rate)], 1e-6)
  const lines = { lineLength: 1.3, radius: 0.2, periodError: 0.003, radiusError: 0.001 }
  const twisted = twist(riser, limbs, [0, 1, 0], lines)
  expectNear([rowsOf(twisted, riser)[0]!.error], [Math.hypot(0.003, (twisted as { period: number }).period / 200)])
})

test("a scale reads the body and the rest together", () => {
  const [row] = rowsOf(weigh(riser, limbs, 0.005), { ...riser, mass: riser.mass + 0.017 })
  expectNear([row!.residual, row!.error], [-0.017, 0.005], 1e-12)
})
