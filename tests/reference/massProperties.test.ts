/**
 * Mass properties against published worked examples. "OpenStax" is University Physics volume 1 (CC BY 4.0); m58329
 * and the like are its modules. Values it prints rounded are compared to half a unit of their last digit; values marked
 * "derived" follow from a textbook formula and were computed outside this project with exact or 25-digit arithmetic.
 */
import { describe, expect, test } from "vitest"
import {
  aboutAxis,
  box,
  compose,
  gyrating,
  pointSolid,
  principal,
  type Solid,
  slender,
  tensorAbout,
  tube,
  type Vec3,
} from "../../src/core/solids"
import { expectNear, members } from "../core/near"

const X: Vec3 = [1, 0, 0]
const Y: Vec3 = [0, 1, 0]
const Z: Vec3 = [0, 0, 1]
const ORIGIN: Vec3 = [0, 0, 0]
const about = (solids: readonly Solid[], point: Vec3, axis: Vec3) => aboutAxis(tensorAbout(solids, point), axis)

/** A solid sphere's radius of gyration is R√(2/5) about every axis (OpenStax, section 10.4). */
const sphere = (mass: number, centre: Vec3, radius: number): Solid => {
  const k = radius * Math.sqrt(2 / 5)
  return gyrating(mass, centre, [k, k, k])
}

/** Equal as printed with this many decimals. */
const printed = (actual: number, value: number, decimals: number) =>
  expect(Math.abs(actual - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-12)

describe("OpenStax, worked examples and problems on moments of inertia", () => {
  test("example 10.11: a child of 25 kg at 1.0 m on a disc of 500 kg and 2.0 m radius: 1025 kg·m²", () => {
    expectNear([about([pointSolid(25, X), tube(500, ORIGIN, Y, 0.05, 2, 0)], ORIGIN, Y)], [1025])
  })

  test("example 10.12 a: a rod of 2.0 kg and 0.5 m with a ball of 1.0 kg and 0.20 m beyond its end, about the other: 0.673", () => {
    const value = about([slender(2, ORIGIN, [0.5, 0, 0]), sphere(1, [0.7, 0, 0], 0.2)], ORIGIN, Z)
    printed(value, 0.673, 3)
    expectNear([value], [0.5 / 3 + 0.016 + 0.49])
  })

  test("example 10.12 b: the same with the ball's centre one radius from the axis: 0.223", () => {
    printed(about([slender(2, ORIGIN, [0.5, 0, 0]), sphere(1, [0.2, 0, 0], 0.2)], ORIGIN, Z), 0.223, 3)
  })

  test("the helicopter example (m58329): four rotor blades of 50 kg and 4.00 m about their ends: 1067 kg·m²", () => {
    const tips: Vec3[] = [
      [4, 0, 0],
      [-4, 0, 0],
      [0, 0, 4],
      [0, 0, -4],
    ]
    printed(
      about(
        tips.map((tip) => slender(50, ORIGIN, tip)),
        ORIGIN,
        Y,
      ),
      1067,
      0,
    )
  })

  test("the rod pendulum example (m58330): a rod of 0.300 m let go at 30° passes the bottom at 3.6 rad/s (g 9.8)", () => {
    const rod = slender(0.3, ORIGIN, [0, -0.3, 0])
    const energy = 0.3 * 9.8 * 0.15 * (1 - Math.cos(Math.PI / 6))
    printed(Math.sqrt((2 * energy) / about([rod], ORIGIN, Z)), 3.6, 1)
  })

  test("a problem with answer (m58330): a rod of 1.0 kg and 2.0 m falls from 60° to level, its tip then at 7.14 m/s (g 9.8)", () => {
    const rod = slender(1, ORIGIN, [2, 0, 0])
    const omega = Math.sqrt((2 * 1 * 9.8 * Math.sin(Math.PI / 3)) / about([rod], ORIGIN, Z))
    printed(2 * omega, 7.14, 2)
  })

  test("a problem with answer (m58330): a rod about an axis L/6 from one end: 7mL²/36 (the axis' place is inferred from the answer)", () => {
    expectNear([about([slender(5, [0, 0, 0], [3, 0, 0])], [0.5, 0, 0], Y)], [(7 * 5 * 9) / 36])
  })

  test("derived from its parallel-axis theorem: the same about an axis L/3 from one end: mL²/9", () => {
    expectNear([about([slender(5, [0, 0, 0], [3, 0, 0])], [1, 0, 0], Y)], [5])
  })
})

describe("bodies about an axis (rod and disc: OpenStax, sections 10.4 and 10.5; the others derived by integration)", () => {
  test.each<[string, Solid, Vec3, Vec3, number]>([
    ["thin rod about its middle, mL²/12", slender(3, [-1, 0, 0], [1, 0, 0]), ORIGIN, Z, 1],
    ["thin rod about its end, mL²/3", slender(3, ORIGIN, [2, 0, 0]), ORIGIN, Z, 4],
    ["full cylinder about its axis, mR²/2", tube(3, ORIGIN, X, 5, 2, 0), ORIGIN, X, 6],
    ["annular cylinder about its axis, m(R₁² + R₂²)/2", tube(4, ORIGIN, X, 5, 3, 2), ORIGIN, X, 26],
    ["hoop about its axis, mR²", tube(3, ORIGIN, X, 0, 2, 2), ORIGIN, X, 12],
    ["hoop about a diameter, mR²/2", tube(3, ORIGIN, X, 0, 2, 2), ORIGIN, Y, 6],
    ["cylinder about a diameter through its middle, mR²/4 + mL²/12", tube(12, [-1, 0, 0], X, 2, 3, 0), ORIGIN, Y, 31],
    ["slab about its middle, m(a² + b²)/12", box(12, ORIGIN, [2, 3, 7]), ORIGIN, Z, 13],
  ])("%s", (_, solid, point, axis, value) => {
    expectNear([about([solid], point, axis)], [value])
  })
})

describe("OpenStax, balances", () => {
  test("the torque balance example (m58341): 50.0 g, 75.0 g and the 150.0 g metre stick against 316 2/3 g balance at 70 cm", () => {
    const stick = compose([
      slender(0.15, ORIGIN, [1, 0, 0]),
      pointSolid(0.05, ORIGIN),
      pointSolid(0.075, [0.3, 0, 0]),
      pointSolid(0.95 / 3, [1, 0, 0]),
    ])
    expectNear([stick.centre[0]], [0.7])
    printed(stick.mass * 9.8, 5.8, 1)
  })

  test("the car example (m58340): 52 % of the weight on the front axle of a 2.5 m wheelbase puts the centre 1.3 m ahead of the rear", () => {
    expectNear([compose([pointSolid(520, [2.5, 0, 0]), pointSolid(480, ORIGIN)]).centre[0]], [1.3])
  })
})

describe("derived from the textbook formulas", () => {
  test("a tube of 120 g, 18/16 mm, 760 mm: 8.700e-6 along, 5.78035e-3 across, 2.310835e-2 about its end", () => {
    const solid = tube(0.12, ORIGIN, X, 0.76, 0.009, 0.008)
    expectNear([solid.aboutCentre.xx], [8.7e-6], 1e-12)
    expectNear([solid.aboutCentre.yy], [5.78035e-3], 1e-12)
    expectNear([about([solid], ORIGIN, Z)], [2.310835e-2], 1e-12)
  })

  test("a cylinder of 1 kg, radius 20 mm, 100 mm long: 2.0e-4 along, 9.333333e-4 across", () => {
    const { aboutCentre } = tube(1, ORIGIN, Z, 0.1, 0.02, 0)
    expectNear([aboutCentre.zz], [2e-4])
    printed(aboutCentre.xx, 9.333333e-4, 10)
  })

  test("a box of 1.2 kg, 40 × 600 × 30 mm: 0.03609, 2.5e-4, 0.03616", () => {
    const { aboutCentre } = box(1.2, ORIGIN, [0.04, 0.6, 0.03])
    expectNear([aboutCentre.xx, aboutCentre.yy, aboutCentre.zz], [0.03609, 2.5e-4, 0.03616])
  })

  test("a cube about a corner: principal moments Ma²/6 and twice 11Ma²/12 (also Marion & Thornton, ch. 11, from memory)", () => {
    const corner = tensorAbout([box(2, [1.5, 1.5, 1.5], [3, 3, 3])], ORIGIN)
    expectNear([corner.xx, corner.xy], [(18 * 2) / 3, -18 / 4])
    const { moments, axes } = principal(corner)
    expectNear(moments, [18 / 6, (11 * 18) / 12, (11 * 18) / 12])
    const diagonal = axes[0].map(Math.abs)
    expectNear(
      diagonal,
      [1, 1, 1].map((each) => each / Math.sqrt(3)),
    )
  })
})

describe("two cylinders and a box put together askew, computed by two other programs to 1e-14", () => {
  const whole = compose([
    tube(0.15, [0, -0.38, 0], Y, 0.76, 0.01, 0),
    tube(0.2, [0, 0.38, 0], Y, 0.02, 0.0175, 0),
    box(1.2, [0.05, -0.4, 0.01], [0.04, 0.6, 0.03]),
  ])

  test("mass 1.55 kg and its centre", () => {
    expectNear([whole.mass], [1.55])
    expectNear(whole.centre, [0.03870967741935, -0.25935483870968, 0.00774193548387], 1e-12)
  })

  test("the tensor about the centre", () => {
    const wanted = [0.16152218078, 0.000992641129, 0.16224250336, 0.008438709677, -0.000135483871, 0.001687741935]
    expectNear(members(whole.aboutCentre), wanted, 5e-12)
  })

  test("its principal moments", () => {
    const { moments } = principal(whole.aboutCentre)
    expectNear(moments, [5.325399540748e-4, 0.161957293866075, 0.162267491448666], 1e-13)
    expectNear([moments[0]], [5.325399540748e-4], 1e-11)
  })
})
