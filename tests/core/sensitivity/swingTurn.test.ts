import { describe, expect, it } from "vitest"
import { cantRates, restTurn, slopeRates, stopTurn } from "../../../src/core/sensitivity"
import { cross, type Vec3 } from "../../../src/core/solids"
import { gravityInBow, poseRotation } from "../../../src/core/balance"
import { type Joint, swingRest } from "../../../src/core/swing"

/** rad: the difference's own error is about its square. */
const STEP = 1e-5
const ANSWER_DIGITS = 8

const gravity = (slope: number, cant: number) => gravityInBow(poseRotation(slope, cant))
const direction = (slope: number, cant: number, joint: Joint, stop: number) =>
  swingRest(gravity(slope, cant), joint, stop).direction

function expectVector(given: Vec3, wanted: Vec3) {
  given.forEach((value, i) => {
    expect(value).toBeCloseTo(wanted[i] ?? Number.NaN, ANSWER_DIGITS)
  })
}
const difference = (ahead: Vec3, behind: Vec3, span: number): Vec3 => [
  (ahead[0] - behind[0]) / span,
  (ahead[1] - behind[1]) / span,
  (ahead[2] - behind[2]) / span,
]

const poses = [
  { where: "off its stop", slope: 0.3, cant: 0.2, stop: 1.1 },
  { where: "on its stop", slope: 0.7, cant: -0.5, stop: 0.3 },
  { where: "on its stop, nose down", slope: -0.7, cant: 0.2, stop: 0.5 },
]
const joints = ["hinge", "ball"] as const

describe.each(joints)("a swing weight on a %s", (joint) => {
  it.each(poses)("turns with slope and cant as its direction says, $where", ({ slope, cant, stop }) => {
    const d = direction(slope, cant, joint, stop)
    const g = gravity(slope, cant)
    const bySlope = restTurn(g, slopeRates(slope, cant).gravity, joint, stop)
    const ahead = direction(slope + STEP, cant, joint, stop)
    expectVector(cross(bySlope, d), difference(ahead, direction(slope - STEP, cant, joint, stop), 2 * STEP))
    const byCant = restTurn(g, cantRates(slope, cant).gravity, joint, stop)
    const canted = direction(slope, cant + STEP, joint, stop)
    expectVector(cross(byCant, d), difference(canted, direction(slope, cant - STEP, joint, stop), 2 * STEP))
  })

  it.each(poses)("turns with its stop only while it leans on it, $where", ({ slope, cant, stop }) => {
    const d = direction(slope, cant, joint, stop)
    const rate = cross(stopTurn(gravity(slope, cant), joint, stop), d)
    const ahead = direction(slope, cant, joint, stop + STEP)
    expectVector(rate, difference(ahead, direction(slope, cant, joint, stop - STEP), 2 * STEP))
  })

  it("is held at a stop of zero from level, and opens with it once it would lean", () => {
    expectVector(restTurn(gravity(0, 0), slopeRates(0, 0).gravity, joint, 0), [0, 0, 0])
    expectVector(stopTurn(gravity(0, 0), joint, 0), [0, 0, 0])
    expectVector(stopTurn(gravity(0.3, 0), joint, 0), [0, 0, -1])
  })

  it("at its stop is free when gravity comes back and held when it leaves", () => {
    const g: Vec3 = [-Math.sin(0.3), -Math.cos(0.3), 0]
    const stop = joint === "hinge" ? -Math.atan2(g[0], -g[1]) : Math.atan2(Math.hypot(g[0], g[2]), -g[1])
    const raising = slopeRates(0.3, 0).gravity
    const lowering: Vec3 = [-raising[0], -raising[1], -raising[2]]
    expectVector(restTurn(g, raising, joint, stop), [0, 0, 0])
    expectVector(restTurn(g, lowering, joint, stop), [0, 0, 1])
  })
})

describe("directions that swingRest decides by rule", () => {
  it("do not turn with the pose: gravity square to a hinge's plane, or straight up over a ball's stop", () => {
    expect(restTurn([0, 0, 1], [0.3, 0.5, 0], "hinge", 0.7)).toEqual([0, 0, 0])
    expect(restTurn([0, 1, 0], [0.3, 0, 0.5], "ball", 0.7)).toEqual([0, 0, 0])
    expect(stopTurn([0, 0, 1], "hinge", 0.7)).toEqual([0, 0, 0])
    // Upside down the ball leans forward to its stop, so a wider stop swings it further forward.
    expect(stopTurn([0, 1, 0], "ball", 0.7)).toEqual([0, 0, 1])
  })
})
