import { describe, expect, it } from "vitest"
import { movedRates, sumMoments, turnedRates } from "../../../src/core/sensitivity"
import {
  add,
  along,
  box,
  cross,
  type Mat3,
  multiply,
  rotateTensor,
  type Solid,
  subtract,
  tube,
  unit,
  type Vec3,
} from "../../../src/core/solids"
import { expectRate, expectSame, momentsOfAll } from "./differences"

const solids = [box(2, [0.3, 0.5, -0.7], [0.2, 0.3, 0.5]), tube(3, [-0.2, 0.7, 0.3], unit([2, -3, 5]), 0.7, 0.03, 0.02)]
const velocity: Vec3 = [2, -3, 5]
const turn: Vec3 = [0.3, 0.7, -0.5]
const pivot: Vec3 = [0.5, -0.3, 0.2]

/** Rodrigues' rotation by `angle` about a unit axis. */
function rotation(axis: Vec3, angle: number): Mat3 {
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const row = (i: number): Vec3 => {
    const e: Vec3 = [i === 0 ? 1 : 0, i === 1 ? 1 : 0, i === 2 ? 1 : 0]
    // Row i of c·1 + (1 - c)·a aᵀ + s·[a]: the last is e × a read as a row.
    const skew = cross(e, axis)
    return [0, 1, 2].map(
      (j) => c * (e[j] ?? 0) + (1 - c) * (axis[i] ?? 0) * (axis[j] ?? 0) + s * (skew[j] ?? 0),
    ) as unknown as Vec3
  }
  return [row(0), row(1), row(2)]
}

const turned = (solid: Solid, angle: number): Solid => {
  const r = rotation(unit(turn), angle * Math.hypot(...turn))
  return {
    mass: solid.mass,
    centre: add(pivot, multiply(r, subtract(solid.centre, pivot))),
    aboutCentre: rotateTensor(solid.aboutCentre, r),
  }
}

describe("movedRates", () => {
  it("is the derivative of the mass moments of bodies moved along", () => {
    expectRate(movedRates(momentsOfAll(solids), velocity), (h) =>
      solids.map((solid) => ({ ...solid, centre: along(solid.centre, velocity, h) })),
    )
  })
})

describe("turnedRates", () => {
  it("is the derivative of the mass moments of bodies turned about a point", () => {
    expectRate(turnedRates(momentsOfAll(solids), turn, pivot), (h) => solids.map((solid) => turned(solid, h)))
  })

  it("differs between two pivots by a move", () => {
    const body = momentsOfAll(solids)
    const other: Vec3 = [-0.7, 0.2, 0.3]
    const move = movedRates(body, cross(turn, subtract(other, pivot)))
    expectSame(turnedRates(body, turn, pivot), sumMoments(turnedRates(body, turn, other), move))
  })

  it("adds no mass and leaves the trace of the tensor about its own pivot as it is", () => {
    const { mass, aboutOrigin } = turnedRates(momentsOfAll(solids), turn, [0, 0, 0])
    expect(mass).toBe(0)
    expect(aboutOrigin.xx + aboutOrigin.yy + aboutOrigin.zz).toBeCloseTo(0, 12)
  })
})
