import { describe, expect, test } from "vitest"
import {
  aboutAxis,
  addTensors,
  axisymmetricTensor,
  cross,
  multiply,
  NO_TENSOR,
  norm,
  pointTensor,
  rotateTensor,
  scaleTensor,
  type Tensor,
  tensorMatrix,
  transpose,
  turnRate,
  unit,
  type Vec3,
} from "../../../src/core/solids"
import { poseRotation } from "../../../src/core/balance"
import { expectNear, expectTensor } from "../near"

const tensor: Tensor = { xx: 7, yy: 11, zz: 13, xy: -2, xz: 3, yz: -5 }

test("tensors add and scale member by member", () => {
  expect(addTensors(tensor, scaleTensor(tensor, 2))).toEqual({ xx: 21, yy: 33, zz: 39, xy: -6, xz: 9, yz: -15 })
  expect(addTensors(tensor, NO_TENSOR)).toEqual(tensor)
})

test("as a matrix it is symmetric with its members in place", () => {
  const matrix = tensorMatrix(tensor)
  expect(matrix).toEqual([
    [7, -2, 3],
    [-2, 11, -5],
    [3, -5, 13],
  ])
  expect(transpose(matrix)).toEqual(matrix)
})

test("a point's moment about an axis is its mass times its squared distance from it", () => {
  const axis = unit([2, 3, 6])
  const place: Vec3 = [5, -7, 1]
  expectNear([aboutAxis(pointTensor(3, place), axis)], [3 * norm(cross(axis, place)) ** 2])
})

test("an axisymmetric tensor is the rotated diagonal one", () => {
  const rotation = poseRotation(0.7, -0.4)
  const axis: Vec3 = [rotation[0][0], rotation[1][0], rotation[2][0]]
  const diagonal: Tensor = { xx: 2, yy: 5, zz: 5, xy: 0, xz: 0, yz: 0 }
  expectTensor(axisymmetricTensor(2, 5, axis), rotateTensor(diagonal, rotation))
})

test("the moment about an axis turns with the body", () => {
  const rotation = poseRotation(0.3, 1.1)
  const axis = unit([3, -2, 5])
  expectNear([aboutAxis(rotateTensor(tensor, rotation), multiply(rotation, axis))], [aboutAxis(tensor, axis)])
})

test("turning there and back changes nothing", () => {
  const rotation = poseRotation(0.3, 1.1)
  expectTensor(rotateTensor(rotateTensor(tensor, rotation), transpose(rotation)), tensor)
})

describe("the rate at which a turning body's tensor changes", () => {
  test("is what a small turn changes it by", () => {
    // About x and z the pose rotation is a turn we can make without the formula under test.
    const h = 1e-6
    const difference = (turn: (angle: number) => Tensor) =>
      scaleTensor(addTensors(turn(h), scaleTensor(turn(-h), -1)), 1 / (2 * h))
    const aboutX = difference((angle) => rotateTensor(tensor, poseRotation(0, angle)))
    const aboutZ = difference((angle) => rotateTensor(tensor, poseRotation(angle, 0)))
    // Central difference: h² truncation and 1e-16/h rounding are both near 1e-10.
    expectTensor(turnRate(tensor, [1, 0, 0]), aboutX, 1e-9)
    expectTensor(turnRate(tensor, [0, 0, 1]), aboutZ, 1e-9)
  })

  test("is nothing about a body's own axis of symmetry", () => {
    const axis = unit([2, -3, 6])
    const rate = turnRate(axisymmetricTensor(2, 5, axis), axis)
    for (const member of Object.values(rate)) expect(Math.abs(member)).toBeLessThan(1e-15)
  })
})

test("a vector without length has no direction", () => {
  expect(() => unit([0, 0, 0])).toThrow(RangeError)
  expect(() => unit([Number.NaN, 2, 3])).toThrow(RangeError)
})
