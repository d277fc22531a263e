import { describe, expect, it } from "vitest"
import { type DrawnHold, drawnBalance, gravityInBow, gravityMoments, poseRotation } from "../../../src/core/balance"
import {
  cantRates,
  centreRate,
  drawnBalanceRates,
  gravityMomentRates,
  momentsOf,
  NO_HOLD_RATES,
  NO_MOMENTS,
  slopeRates,
  sumMoments,
} from "../../../src/core/sensitivity"
import { box, compose, pointSolid, type Vec3 } from "../../../src/core/solids"

const STEP = 1e-5
/** Central differences leave about STEP² and rounding/STEP. */
const DIGITS = 7

const body = box(2, [0.3, -0.5, 0.7], [0.2, 0.3, 0.5])
const added: Vec3 = [0.5, 0.3, -0.2]
const grown = (h: number) => compose([body, pointSolid(3 * h, added)])
const growth = momentsOf(pointSolid(3, added))

describe("centreRate", () => {
  it("is the derivative of the centre of mass while mass is added elsewhere", () => {
    const [ahead, behind] = [grown(STEP).centre, grown(-STEP).centre]
    centreRate(grown(0), growth).forEach((rate, i) => {
      expect(rate).toBeCloseTo(((ahead[i] ?? 0) - (behind[i] ?? 0)) / (2 * STEP), DIGITS)
    })
  })
})

const poses = [
  { by: "slope", at: (h: number) => poseRotation(0.3 + h, -0.2), rates: slopeRates(0.3, -0.2) },
  { by: "cant", at: (h: number) => poseRotation(0.3, -0.2 + h), rates: cantRates(0.3, -0.2) },
]

describe("gravityMomentRates", () => {
  it.each(poses)("follows masses and $by together", ({ at, rates }) => {
    const moments = (h: number) => gravityMoments(grown(h).mass, grown(h).centre, at(h))
    const given = gravityMomentRates(grown(0), growth, at(0), rates.rotation)
    expect(given.noseDown).toBeCloseTo((moments(STEP).noseDown - moments(-STEP).noseDown) / (2 * STEP), DIGITS)
    expect(given.cantRight).toBeCloseTo((moments(STEP).cantRight - moments(-STEP).cantRight) / (2 * STEP), DIGITS)
  })

  it.each(poses)("comes with gravity's own rate by $by", ({ at, rates }) => {
    const [ahead, behind] = [gravityInBow(at(STEP)), gravityInBow(at(-STEP))]
    rates.gravity.forEach((rate, i) => {
      expect(rate).toBeCloseTo(((ahead[i] ?? 0) - (behind[i] ?? 0)) / (2 * STEP), DIGITS)
    })
  })

  it("is nothing when nothing changes", () => {
    const none = slopeRates(0, 0).rotation.map(() => [0, 0, 0]) as unknown as ReturnType<typeof poseRotation>
    expect(gravityMomentRates(grown(0), NO_MOMENTS, poseRotation(0, 0), none)).toEqual({ noseDown: 0, cantRight: 0 })
    expect(sumMoments()).toEqual(NO_MOMENTS)
  })
})

const hold: DrawnHold = {
  holdForce: 170,
  nockHeight: 0.05,
  drawLength: 0.7,
  elbowElevation: 0.03,
  mass: 2.3,
  noseDown: 1.1,
}

describe("drawnBalanceRates", () => {
  it.each(Object.keys(hold) as (keyof DrawnHold)[])("is the derivative of the drawn balance by %s", (key) => {
    const changed = (h: number) => drawnBalance({ ...hold, [key]: hold[key] + h })
    const rates = drawnBalanceRates(hold, { ...NO_HOLD_RATES, [key]: 1 })
    for (const figure of ["lift", "netLift", "balancedForward"] as const) {
      expect(rates[figure]).toBeCloseTo((changed(STEP)[figure] - changed(-STEP)[figure]) / (2 * STEP), DIGITS - 1)
    }
  })
})
