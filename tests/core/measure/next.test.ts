import { expect, test } from "vitest"
import { centreRate } from "../../../src/core/sensitivity"
import { bodyRates, expectedSpread, fitBody, type Observation, spreadOf } from "../../../src/core/measure"
import { decompose } from "../../../src/scene/measure/decompose"
import { expectNear } from "../near"
import { centreOf, DEGREE, hang, limbs, normal, riser, session, weigh } from "./planted"

const hook = { tiltError: 0.4 * DEGREE, pointError: 0.0015 }
const spread = (seen: readonly Observation[], next: Observation | null) =>
  expectedSpread(seen, fitBody(seen, riser, decompose), next, limbs, decompose)

test("a second hang from another point is worth more than the same one again, or than weighing again", () => {
  const seen = [weigh(riser, limbs, 0.004), hang(riser, limbs, [-0.22, 0.3, 0.01], hook)]
  const now = spread(seen, null)
  const again = spread(seen, seen[1]!)
  const weighed = spread(seen, seen[0]!)
  const elsewhere = spread(seen, hang(riser, limbs, [0.35, -0.07, 0.01], hook))
  expect(again).toBeLessThanOrEqual(now)
  expect(weighed).toBeLessThanOrEqual(now)
  expect(elsewhere).toBeLessThan(0.2 * Math.min(again, weighed))
})

test("once all is determined it is the ± of the fit, forward, up and side together", () => {
  const seen = session(riser, limbs, normal(3))
  const found = fitBody(seen, riser, decompose)
  const whole = { mass: found.body.mass + limbs.mass, centre: centreOf(found.body, limbs) }
  const rates = bodyRates(found.body).map((rate) => centreRate(whole, rate))
  const axes = [0, 1, 2].map((axis) =>
    spreadOf(
      found,
      rates.map((rate) => rate[axis]!),
    ),
  )
  // The plausible spans still count, as one reading as wide as they are: less than a thousandth here.
  expectNear([expectedSpread(seen, found, null, limbs, decompose)], [Math.hypot(...axes)], 5e-3)
})

test("what is expected of a reading is what it then brings", () => {
  const seen = [
    weigh(riser, limbs, 0.004),
    hang(riser, limbs, [-0.22, 0.3, 0.01], hook),
    hang(riser, limbs, [0.35, -0.07, 0.01], hook),
  ]
  const next = hang(riser, limbs, [0.1, 0.5, 0.02], hook)
  expectNear([spread(seen, next)], [spread([...seen, next], null)], 1e-12)
})
