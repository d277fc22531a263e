import { describe, expect, test } from "vitest"
import {
  cross,
  dot,
  multiply,
  principal,
  rotateTensor,
  type Tensor,
  tensorMatrix,
  type Vec3,
} from "../../../src/core/solids"
import { poseRotation } from "../../../src/core/balance"
import { expectNear } from "../near"

const diagonal = (xx: number, yy: number, zz: number): Tensor => ({ xx, yy, zz, xy: 0, xz: 0, yz: 0 })

function expectPrincipal(tensor: Tensor, moments: Vec3): void {
  const found = principal(tensor)
  expectNear(found.moments, moments)
  const [a, b, c] = found.axes
  for (const axis of found.axes) expectNear([dot(axis, axis)], [1])
  expectNear([...cross(a, b)], [...c])
  found.axes.forEach((axis, index) => {
    const turned = multiply(tensorMatrix(tensor), axis)
    const size = Math.max(...moments)
    for (let k = 0; k < 3; k++) {
      expect(Math.abs(turned[k]! - found.moments[index]! * axis[k]!)).toBeLessThanOrEqual(1e-13 * size)
    }
  })
}

describe("principal moments come ascending with right-handed unit axes", () => {
  test("of a diagonal tensor in any order", () => {
    expectPrincipal(diagonal(5, 2, 3), [2, 3, 5])
    expect(principal(diagonal(5, 2, 3)).axes[0]).toEqual([0, 1, 0])
  })

  test("of a turned tensor", () => {
    expectPrincipal(rotateTensor(diagonal(5, 2, 3), poseRotation(0.7, -1.1)), [2, 3, 5])
  })

  test("of a full matrix with a known answer: diagonal 2, off-diagonal -1 and 0", () => {
    expectPrincipal({ xx: 2, yy: 2, zz: 2, xy: -1, xz: 0, yz: -1 }, [2 - Math.SQRT2, 2, 2 + Math.SQRT2])
  })

  test("where two moments or all three coincide", () => {
    expectPrincipal(rotateTensor(diagonal(7, 3, 7), poseRotation(0.4, 0.9)), [3, 7, 7])
    expectPrincipal(diagonal(3, 3, 3), [3, 3, 3])
  })

  test("where one is nothing, as of a slender rod, or all are", () => {
    expectPrincipal(rotateTensor(diagonal(0, 2, 2), poseRotation(0.4, 0.9)), [0, 2, 2])
    expect(principal(diagonal(0, 0, 0)).moments).toEqual([0, 0, 0])
  })

  test("of very large and very small tensors alike", () => {
    const turned = (size: number) => rotateTensor(diagonal(5 * size, 2 * size, 3 * size), poseRotation(0.7, -1.1))
    expectPrincipal(turned(1e-12), [2e-12, 3e-12, 5e-12])
    expectPrincipal(turned(1e12), [2e12, 3e12, 5e12])
  })
})
