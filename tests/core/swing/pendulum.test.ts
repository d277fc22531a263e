import { describe, expect, test } from "vitest"
import { compose, unit, type Vec3 } from "../../../src/core/solids"
import { freeTurnInertia, pendulumOf, type SwingWeight, swingSolids } from "../../../src/core/swing"
import { expectNear } from "../near"

const swing: SwingWeight = {
  stemLength: 0.2,
  stemMass: 0.03,
  bobMass: 0.17,
  bobRadius: 0.015,
  bobLength: 0.05,
  joint: "hinge",
  stop: 1,
}

describe("a swing weight as a pendulum", () => {
  test("has the mass of both, the bob centred on the stem's end", () => {
    const { mass, arm } = pendulumOf(swing)
    expectNear([mass, mass * arm], [0.2, 0.03 * 0.1 + 0.17 * 0.2])
  })

  test("has its inertias about its own centre", () => {
    const { mass, arm, acrossCentre, alongCentre } = pendulumOf(swing)
    const stem = (0.03 * 0.2 ** 2) / 3
    const bob = (0.17 * (3 * 0.015 ** 2 + 0.05 ** 2)) / 12 + 0.17 * 0.2 ** 2
    expectNear([acrossCentre + mass * arm ** 2], [stem + bob])
    expectNear([alongCentre], [(0.17 * 0.015 ** 2) / 2])
  })

  test("is the same however it hangs", () => {
    const hinge: Vec3 = [0.3, -0.2, 0.1]
    const d = unit([2, -6, 3])
    const whole = compose(swingSolids(swing, hinge, d))
    const { mass, arm, acrossCentre, alongCentre } = pendulumOf(swing)
    expectNear([whole.mass], [mass])
    expectNear(whole.centre, [hinge[0] + arm * d[0], hinge[1] + arm * d[1], hinge[2] + arm * d[2]])
    const { xx, yy, zz } = whole.aboutCentre
    expectNear([xx + yy + zz], [2 * acrossCentre + alongCentre])
  })

  test("weighing nothing has no arm and no inertia", () => {
    expect(pendulumOf({ ...swing, stemMass: 0, bobMass: 0 })).toEqual({
      mass: 0,
      arm: 0,
      acrossCentre: 0,
      alongCentre: 0,
    })
  })
})

describe("what a freely hanging weight adds to a quick turn", () => {
  const pendulum = pendulumOf(swing)
  const down: Vec3 = [0, -1, 0]
  const pitch: Vec3 = [0, 0, 1]
  const acrossMass =
    (pendulum.mass * pendulum.acrossCentre) / (pendulum.acrossCentre + pendulum.mass * pendulum.arm ** 2)

  test("level with the grip, the hinge moves along the stem and the whole mass follows", () => {
    expectNear([freeTurnInertia(pendulum, [0.3, 0, 0], down, pitch)], [pendulum.mass * 0.3 ** 2])
  })

  test("straight below the grip, the hinge moves across the stem and only M·Ic/(Ic + Ml²) follows", () => {
    expectNear([freeTurnInertia(pendulum, [0, -0.4, 0], down, pitch)], [acrossMass * 0.4 ** 2])
    expect(acrossMass).toBeLessThan(pendulum.mass)
  })

  test("elsewhere the two add as the hinge's motion splits", () => {
    expectNear([freeTurnInertia(pendulum, [0.3, -0.4, 0.7], down, pitch)], [pendulum.mass * 0.09 + acrossMass * 0.16])
  })

  test("a bob with its mass in one place at the stem's end follows across not at all", () => {
    const point = { mass: 2, arm: 0.3, acrossCentre: 0, alongCentre: 0 }
    expect(freeTurnInertia(point, [0, -0.4, 0], down, pitch)).toBe(0)
  })

  test("one of no mass adds nothing", () => {
    expect(freeTurnInertia({ mass: 0, arm: 0, acrossCentre: 0, alongCentre: 0 }, [2, 3, 5], down, pitch)).toBe(0)
  })

  test("is the kinetic energy of the least resistance: the minimum over the weight's own turn", () => {
    // E(w) = ½M|v + w×c|² + ½Ic w² for hinge velocity v of a unit turn; twice its least value over w is the figure.
    const hinge: Vec3 = [0.3, -0.4, 0]
    const [vx, vy] = [0.4, 0.3]
    const { mass: m, arm: l, acrossCentre: ic } = pendulum
    const twiceEnergy = (w: number) => m * ((vx + w * l) ** 2 + vy ** 2) + ic * w * w
    let least = Infinity
    for (let w = -5; w <= 5; w += 1e-4) least = Math.min(least, twiceEnergy(w))
    // A parabola sampled every 1e-4 rad is within (Ic + Ml²)·(5e-5)² of its vertex.
    expect(freeTurnInertia(pendulum, hinge, down, pitch)).toBeLessThanOrEqual(least + 1e-12)
    expect(least - freeTurnInertia(pendulum, hinge, down, pitch)).toBeLessThan(1e-10)
  })
})
