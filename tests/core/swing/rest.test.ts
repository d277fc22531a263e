import { describe, expect, test } from "vitest"
import { gravityInBow, poseRotation } from "../../../src/core/balance"
import { swingRest } from "../../../src/core/swing"
import { expectNear } from "../near"

const degrees = (angle: number) => (angle * Math.PI) / 180
const rest = (slope: number, cant: number, joint: "hinge" | "ball", stop: number) =>
  swingRest(gravityInBow(poseRotation(degrees(slope), degrees(cant))), joint, degrees(stop))

describe("a swing weight at rest", () => {
  test("on a level bow hangs straight down, whatever its joint and stop", () => {
    for (const joint of ["hinge", "ball"] as const) {
      for (const stop of [0, 30, 180]) {
        const { direction, onStop } = rest(0, 0, joint, stop)
        expectNear(direction, [0, -1, 0])
        expect(onStop).toBe(false)
      }
    }
  })

  test("with the front raised hangs back in the bow's frame, by the slope", () => {
    for (const joint of ["hinge", "ball"] as const) {
      const { direction, onStop } = rest(25, 0, joint, 80)
      expectNear(direction, [-Math.sin(degrees(25)), -Math.cos(degrees(25)), 0])
      expect(onStop).toBe(false)
    }
  })

  test("under cant a ball follows gravity out of the bow's plane, a hinge stays in it", () => {
    const gravity = gravityInBow(poseRotation(degrees(20), degrees(30)))
    expectNear(rest(20, 30, "ball", 80).direction, gravity)
    const across = Math.hypot(gravity[0], gravity[1])
    expectNear(rest(20, 30, "hinge", 80).direction, [gravity[0] / across, gravity[1] / across, 0])
  })

  test("beyond its stop leans on it, on the side to which gravity pulls", () => {
    for (const [slope, sign] of [
      [50, -1],
      [-50, 1],
    ] as const) {
      for (const joint of ["hinge", "ball"] as const) {
        const { direction, onStop } = rest(slope, 0, joint, 30)
        expectNear(direction, [sign * Math.sin(degrees(30)), -Math.cos(degrees(30)), 0])
        expect(onStop).toBe(true)
      }
    }
  })

  test("a ball on its stop lies in the vertical plane through the bow's down", () => {
    const gravity = gravityInBow(poseRotation(degrees(40), degrees(50)))
    const { direction, onStop } = swingRest(gravity, "ball", degrees(30))
    expect(onStop).toBe(true)
    expectNear([direction[0] * gravity[2]], [direction[2] * gravity[0]])
    expectNear([direction[1]], [-Math.cos(degrees(30))])
    expectNear([Math.hypot(...direction)], [1])
  })

  test("a stop of 0 locks it to the bow", () => {
    expect(rest(10, 0, "hinge", 0)).toMatchObject({ onStop: true })
    expectNear(rest(10, 0, "hinge", 0).direction, [0, -1, 0])
  })

  test("gravity along the hinge's own axis leaves it at the bow's down", () => {
    expect(swingRest([0, 0, 1], "hinge", degrees(60))).toEqual({ direction: [0, -1, 0], onStop: false })
  })

  test("a ball upside down leans forward on its stop; one without a stop in the way hangs where gravity points", () => {
    const { direction, onStop } = swingRest([0, 1, 0], "ball", degrees(70))
    expectNear(direction, [Math.sin(degrees(70)), -Math.cos(degrees(70)), 0])
    expect(onStop).toBe(true)
    expect(swingRest([0, 1, 0], "ball", Math.PI)).toEqual({ direction: [0, 1, 0], onStop: false })
  })
})
