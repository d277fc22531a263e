import { describe, test } from "vitest"
import { armDirection, droopTurn, mountDirection, pitchTurn, splayTurn, yawTurn } from "../../../src/core/rig"
import { cross, norm, type Vec3 } from "../../../src/core/solids"
import { expectNear } from "../near"

const degrees = (angle: number) => (angle * Math.PI) / 180

/** Central difference of a direction; truncation h² and rounding 1e-16/h are both near 1e-10. */
const difference = (of: (x: number) => Vec3, x: number, h = 1e-6) => {
  const [a, b] = [of(x + h), of(x - h)]
  return [0, 1, 2].map((k) => (a[k]! - b[k]!) / (2 * h))
}
const DIFFERENCE = 1e-9

describe("a mount points", () => {
  test.each<[number, number, Vec3]>([
    [0, 0, [1, 0, 0]],
    [0, 180, [-1, 0, 0]],
    [0, 90, [0, 0, -1]],
    [90, 37, [0, 1, 0]],
    [-90, 37, [0, -1, 0]],
    [30, 0, [Math.sqrt(3) / 2, 0.5, 0]],
  ])("pitch %d°, yaw %d°: %j (yaw turns to the left, which is -z)", (pitch, yaw, direction) => {
    expectNear(mountDirection(degrees(pitch), degrees(yaw)), direction, 1e-15)
  })
})

describe("a V-bar's arm points", () => {
  test.each<[number, number, Vec3]>([
    [0, 0, [-1, 0, 0]],
    [90, 0, [0, 0, 1]],
    [180, 0, [1, 0, 0]],
    [45, 0, [-Math.SQRT1_2, 0, Math.SQRT1_2]],
    [45, 90, [0, -1, 0]],
    [0, 30, [-Math.sqrt(3) / 2, -0.5, 0]],
  ])("splay %d°, droop %d°: right %j, left mirrored in z", (splay, droop, direction) => {
    expectNear(armDirection(degrees(splay), degrees(droop), "right"), direction, 1e-15)
    const [x, y, z] = direction
    expectNear(armDirection(degrees(splay), degrees(droop), "left"), [x, y, -z], 1e-15)
  })

  test("always with unit length", () => {
    expectNear([norm(armDirection(0.7, 0.3, "left")), norm(mountDirection(0.7, 0.3))], [1, 1])
  })
})

describe("the stated turns are how directions change", () => {
  const [splay, droop] = [0.7, 0.3]

  test.each(["left", "right"] as const)("splay and droop of the %s arm", (side) => {
    const d = armDirection(splay, droop, side)
    expectNear(
      cross(splayTurn(side), d),
      difference((x) => armDirection(x, droop, side), splay),
      DIFFERENCE,
    )
    expectNear(
      cross(droopTurn(splay, side), d),
      difference((x) => armDirection(splay, x, side), droop),
      DIFFERENCE,
    )
  })

  test("pitch and yaw of a mount", () => {
    const d = mountDirection(0.5, -1.2)
    expectNear(
      cross(yawTurn, d),
      difference((x) => mountDirection(0.5, x), -1.2),
      DIFFERENCE,
    )
    expectNear(
      cross(pitchTurn(-1.2), d),
      difference((x) => mountDirection(x, -1.2), 0.5),
      DIFFERENCE,
    )
  })
})
