/** Mass properties and principal moments against a general physics engine and a linear-algebra library. */
import RAPIER from "@dimforge/rapier3d-compat"
import fc from "fast-check"
import { EigenvalueDecomposition, Matrix } from "ml-matrix"
import { beforeAll, describe, expect, test } from "vitest"
import { poseRotation } from "../../src/core/balance"
import {
  box,
  compose,
  principal,
  rotateTensor,
  type Solid,
  type Tensor,
  tensorMatrix,
  tube,
  type Vec3,
} from "../../src/core/solids"
import { expectNear } from "../core/near"

/** rapier3d computes in float32: seen to agree to 2e-5 relative on a composite of three bodies. */
const FLOAT32 = 2e-5
/** Its moments of arbitrary piles, relative to the largest: 1.3e-4 was the worst of 2000, where two coincide. */
const FLOAT32_PILE = 2e-4
/** Size of the places tried, m: what a centre's error is compared to. */
const REACH = 0.8

beforeAll(async () => {
  await RAPIER.init()
})

interface Placed {
  readonly collider: RAPIER.ColliderDesc
  readonly solid: Solid
}

const axes: Record<"x" | "y" | "z", { d: Vec3; turn: { x: number; y: number; z: number; w: number } }> = {
  // rapier's cylinders lie along y; a quarter turn about z or x brings y to x or z.
  x: { d: [1, 0, 0], turn: { x: 0, y: 0, z: -Math.SQRT1_2, w: Math.SQRT1_2 } },
  y: { d: [0, 1, 0], turn: { x: 0, y: 0, z: 0, w: 1 } },
  z: { d: [0, 0, 1], turn: { x: Math.SQRT1_2, y: 0, z: 0, w: Math.SQRT1_2 } },
}

function cylinder(mass: number, centre: Vec3, axis: "x" | "y" | "z", length: number, radius: number): Placed {
  const { d, turn } = axes[axis]
  const start: Vec3 = [
    centre[0] - (d[0] * length) / 2,
    centre[1] - (d[1] * length) / 2,
    centre[2] - (d[2] * length) / 2,
  ]
  const collider = RAPIER.ColliderDesc.cylinder(length / 2, radius)
    .setMass(mass)
    .setTranslation(...centre)
    .setRotation(turn)
  return { collider, solid: tube(mass, start, d, length, radius, 0) }
}

function cuboid(mass: number, centre: Vec3, size: Vec3): Placed {
  const collider = RAPIER.ColliderDesc.cuboid(size[0] / 2, size[1] / 2, size[2] / 2)
    .setMass(mass)
    .setTranslation(...centre)
  return { collider, solid: box(mass, centre, size) }
}

function byEngine(placed: readonly Placed[]) {
  const world = new RAPIER.World({ x: 0, y: 0, z: 0 })
  const body = world.createRigidBody(RAPIER.RigidBodyDesc.dynamic())
  for (const { collider } of placed) world.createCollider(collider, body)
  world.step()
  const { x, y, z } = body.localCom()
  const inertia = body.principalInertia()
  const result = {
    mass: body.mass(),
    centre: [x, y, z],
    moments: [inertia.x, inertia.y, inertia.z].sort((a, b) => a - b),
  }
  world.free()
  return result
}

function expectSame(placed: readonly Placed[], tolerance = FLOAT32): void {
  const engine = byEngine(placed)
  const ours = compose(placed.map(({ solid }) => solid))
  expectNear([ours.mass], [engine.mass], FLOAT32)
  ours.centre.forEach((value, axis) => {
    expect(Math.abs(value - engine.centre[axis]!)).toBeLessThan(FLOAT32 * REACH)
  })
  expectNear([...principal(ours.aboutCentre).moments], engine.moments, tolerance)
}

describe("@dimforge/rapier3d-compat gives the same mass, centre and principal moments", () => {
  test("of a bow-like composite", () => {
    expectSame([
      cuboid(1.2, [0.02, -0.01, 0.003], [0.05, 0.6, 0.03]),
      cuboid(0.21, [0.13, 0.125, -0.029], [0.15, 0.08, 0.043]),
      cylinder(0.12, [0.42, -0.07, 0], "x", 0.7, 0.009),
      cylinder(0.12, [0.784, -0.07, 0], "x", 0.028, 0.013),
      cylinder(0.18, [0.04, -0.4, 0.01], "y", 0.25, 0.008),
      cylinder(0.17, [0.03, -0.07, 0.15], "z", 0.22, 0.009),
    ])
  })

  test("of random piles of boxes and cylinders", () => {
    const mass = fc.double({ min: 0.1, max: 2, noNaN: true })
    const along = fc.double({ min: -REACH, max: REACH, noNaN: true })
    const place: fc.Arbitrary<Vec3> = fc.tuple(along, along, along)
    const edge = fc.double({ min: 0.05, max: 0.5, noNaN: true })
    const body = fc.oneof(
      fc.tuple(mass, place, fc.tuple(edge, edge, edge)).map(
        ([m, c, size]) =>
          () =>
            cuboid(m, c, size),
      ),
      fc.tuple(mass, place, fc.constantFrom("x", "y", "z"), edge, edge).map(
        ([m, c, axis, length, radius]) =>
          () =>
            cylinder(m, c, axis as "x", length, radius),
      ),
    )
    fc.assert(
      fc.property(fc.noBias(fc.noShrink(fc.array(body, { minLength: 2, maxLength: 12 }))), (bodies) => {
        const placed = bodies.map((make) => make())
        expectSame(placed, FLOAT32_PILE)
      }),
      { seed: 2357, numRuns: 60 },
    )
  })
})

describe("ml-matrix gives the same principal moments", () => {
  /** Both work in float64; relative to the largest moment. */
  const FLOAT64 = 1e-13

  const expectSameMoments = (tensor: Tensor): void => {
    const theirs = new EigenvalueDecomposition(new Matrix(tensorMatrix(tensor).map((row) => [...row])), {
      assumeSymmetric: true,
    })
    const sorted = [...theirs.realEigenvalues].sort((a, b) => a - b)
    expectNear([...principal(tensor).moments], sorted, FLOAT64)
  }
  const moment = fc.double({ min: 1e-6, max: 10, noNaN: true })
  const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true })
  const turned = ([a, b, c]: readonly number[], one: number, two: number) =>
    rotateTensor({ xx: a!, yy: b!, zz: c!, xy: 0, xz: 0, yz: 0 }, poseRotation(one, two))

  test("of any turned tensor", () => {
    fc.assert(
      fc.property(fc.tuple(moment, moment, moment), angle, angle, (diagonal, one, two) => {
        expectSameMoments(turned(diagonal, one, two))
      }),
      { seed: 3571, numRuns: 500 },
    )
  })

  test("where two or three moments coincide, or nearly do", () => {
    const gap = fc.constantFrom(0, 1e-15, 1e-12, 1e-9, 1e-6)
    fc.assert(
      fc.property(moment, moment, gap, gap, angle, angle, (a, b, near, nearer, one, two) => {
        expectSameMoments(turned([a, a * (1 + near), b], one, two))
        expectSameMoments(turned([a, a * (1 + near), a * (1 + nearer)], one, two))
      }),
      { seed: 5711, numRuns: 300 },
    )
  })

  test("of any symmetric matrix, a body's or not", () => {
    // On a grid: ml-matrix itself breaks down on members near the smallest float64.
    const member = fc.integer({ min: -5000, max: 5000 }).map((thousandths) => thousandths / 1000)
    fc.assert(
      fc.property(member, member, member, member, member, member, (xx, yy, zz, xy, xz, yz) => {
        expectSameMoments({ xx, yy, zz, xy, xz, yz })
      }),
      { seed: 7112, numRuns: 500 },
    )
  })
})
