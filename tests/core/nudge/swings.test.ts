import { expect, test } from "vitest"
import { hingedTensor, tensorOf } from "../../../src/core/nudge"
import { aboutAxis, compose, cross, dot, pointSolid, type Solid, tube, type Vec3 } from "../../../src/core/solids"
import { freeTurnInertia, pendulumOf, type SwingWeight, swingSolids } from "../../../src/core/swing"
import { expectTensor } from "../near"

const hinge: Vec3 = [0.41, -0.13, 0.07]
const across: Vec3 = [0, 0, 1]
/** Off the hinge's plane too, so that every element is met. */
const body: Solid[] = [
  tube(0.19, [0.43, -0.3, 0.11], [0.6, 0, 0.8], 0.17, 0.02, 0),
  pointSolid(0.11, [0.37, -0.23, 0.02]),
]

/** Twice the kinetic energy when the bow turns at ω about the grip and the body at q about its hinge besides. */
function doubled(turn: Vec3, q: number): number {
  const spin: Vec3 = [turn[0] + q * across[0], turn[1] + q * across[1], turn[2] + q * across[2]]
  return body.reduce((sum, { mass, centre, aboutCentre }) => {
    const arm: Vec3 = [centre[0] - hinge[0], centre[1] - hinge[1], centre[2] - hinge[2]]
    const [carried, swung] = [cross(turn, centre), cross(across, arm)]
    const speed: Vec3 = [carried[0] + q * swung[0], carried[1] + q * swung[1], carried[2] + q * swung[2]]
    return sum + mass * dot(speed, speed) + aboutAxis(aboutCentre, spin)
  }, 0)
}

test("a body on a hinge takes, of all speeds its hinge can run at, the one of least energy", () => {
  const tensor = hingedTensor(compose(body), hinge, across)
  const turns: Vec3[] = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
    [0.3, -0.7, 0.5],
  ]
  for (const turn of turns) {
    // The energy is a parabola in q: its least value from three points of it.
    const [low, middle, high] = [doubled(turn, -1), doubled(turn, 0), doubled(turn, 1)]
    const [slope, bend] = [(high - low) / 2, high + low - 2 * middle]
    expect(aboutAxis(tensor, turn)).toBeCloseTo(middle - slope ** 2 / (2 * bend), 12)
  }
})

test("in pitch it is what the pendulum's own formula says", () => {
  const weight: SwingWeight = {
    stemLength: 0.17,
    stemMass: 0.019,
    bobMass: 0.151,
    bobRadius: 0.016,
    bobLength: 0.029,
    joint: "hinge",
    stop: 1,
  }
  const stem: Vec3 = [0.28, -0.96, 0]
  const tensor = hingedTensor(compose(swingSolids(weight, hinge, stem)), hinge, across)
  expect(tensor.zz).toBeCloseTo(freeTurnInertia(pendulumOf(weight), hinge, stem, across), 13)
})

test("a point on the hinge's axis is carried along whole", () => {
  const point = compose([pointSolid(0.13, [0.41, -0.13, 0.3])])
  expectTensor(hingedTensor(point, hinge, across), point.aboutOrigin)
})

test("a tensor is found again from its moments of inertia", () => {
  const tensor = { xx: 0.13, yy: 0.37, zz: 0.41, xy: 0.023, xz: -0.017, yz: 0.029 }
  expectTensor(
    tensorOf((axis) => aboutAxis(tensor, axis)),
    tensor,
    1e-14,
  )
})
