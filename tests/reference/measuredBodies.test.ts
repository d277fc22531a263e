/**
 * Measuring a body backwards from published balances and periods: the fit is given what a scale, a plumb line and a
 * watch would have read and has to give back the printed mass, place and moment of inertia.
 */
import { describe, expect, test } from "vitest"
import { amplitudeStretch, fitBody, type MeasuredBody, type Observation, rowsOf } from "../../src/core/measure"
import { momentsOf, NO_MOMENTS, sumMoments } from "../../src/core/sensitivity"
import { pointSolid, slender, type Vec3 } from "../../src/core/solids"
import ellipk from "@stdlib/math-base-special-ellipk"
import { decompose } from "../../src/scene/measure/decompose"
import { expectNear } from "../core/near"

/** Nothing of the published bodies, but near enough to count as a bow of their size. */
const guess = (mass: number): MeasuredBody => ({ mass, centre: [0.01, 0.02, 0.03], squares: [0.01, 0.01, 0.01] })
const sharp = { massError: 1e-6, tiltError: 1e-6, pointError: 1e-6, periodError: 1e-6 }
const alone = { rest: NO_MOMENTS }
const level = { slope: 0, cant: 0 }

describe("weight and balance, as aircraft are loaded", () => {
  // A tenth of a pound a kilogram and a station in inches a centimetre, to bring an aircraft to the size of a bow.
  const KG = 1e-3
  const M = 1e-3
  const rest = momentsOf(pointSolid(100 * KG, [150 * M, 0, 0]))

  test("an 8000 lb aircraft at 78.5 with 100 lb at station 150 is at 77.594 without it (FAA Pilot's Handbook, weight shift, as reposted at flightlearnings.com, 2011: 77.0 with it at 30)", () => {
    const seen: Observation[] = [
      { kind: "scale", rest, mass: 8000 * KG, ...sharp },
      { kind: "hang", rest, at: [78.5 * M, 0.5, 0], ...level, ...sharp },
    ]
    const { body } = fitBody(seen, { ...guess(7.5), centre: [0.08, 0, 0] }, decompose)
    expectNear([body.mass], [7900 * KG], 1e-9)
    const moved = sumMoments(
      { ...NO_MOMENTS, mass: body.mass, first: [body.mass * body.centre[0], 0, 0] },
      momentsOf(pointSolid(100 * KG, [30 * M, 0, 0])),
    )
    expectNear([moved.first[0] / moved.mass], [77 * M], 1e-9)
  })

  test("a 3.000 kg bow whose 0.200 kg were moved by 0.150 m hangs 10.0 mm further (derived: m/M = shift/distance, as in the same handbook)", () => {
    const at = (x: number) => momentsOf(pointSolid(0.2, [x, 0, 0]))
    const seen = (x: number, plumb: number): Observation[] => [
      { kind: "scale", rest: at(x), mass: 3, ...sharp },
      { kind: "hang", rest: at(x), at: [plumb, 0.3, 0], ...level, ...sharp },
    ]
    const first = fitBody(seen(0.5, 0.04), guess(2.5), decompose).body
    const second = fitBody(seen(0.65, 0.05), guess(2.5), decompose).body
    expectNear([first.mass, first.centre[0]], [second.mass, second.centre[0]], 1e-9)
  })
})

/** One swing of a rod of known mass and middle about the pitch axis. */
const swung = (mass: number, centre: Vec3, at: Vec3, period: number): Observation[] => [
  { kind: "scale", ...alone, mass, ...sharp },
  { kind: "hang", ...alone, at, ...level, ...sharp },
  { kind: "hang", ...alone, at: [0.3, centre[1], 0], slope: Math.PI / 2, cant: 0, ...sharp },
  { kind: "swing", ...alone, at, axis: [0, 0, 1], period, amplitude: 0, ...sharp },
]

describe("the physical pendulum, T = 2π√(I/(m g d)) (OpenStax University Physics volume 1, section 15.4)", () => {
  test("a rod of 0.30 m hung at its end in 0.8972935138 s has L²/12 about its middle (derived)", () => {
    const { body, converged } = fitBody(swung(0.4, [0, 0.35, 0], [0, 0.5, 0], 0.8972935138), guess(0.5), decompose)
    expect(converged).toBe(true)
    expectNear([body.squares[2]], [0.3 ** 2 / 12], 1e-8)
  })

  test("a rod of 1 m swings fastest, in 1.5245413805 s, hung 0.2886751346 m from its middle: it is then its own radius of gyration away (derived)", () => {
    const seen = swung(0.7, [0, 0, 0], [0, 0.2886751346, 0], 1.5245413805)
    const { body } = fitBody(seen, { ...guess(0.5), squares: [0.07, 0.02, 0.07] }, decompose)
    expectNear([Math.sqrt(body.squares[2])], [0.2886751346], 1e-8)
  })

  test("example 15.3: a bob on 0.75000 m with a period of 1.7357 s is a point where g is 9.8281 m/s²", () => {
    // The bench has standard gravity; T √g stays.
    const period = 1.7357 * Math.sqrt(9.8281 / 9.80665)
    const [, , , swing] = swung(0.5, [0, -0.75, 0], [0, 0, 0], period)
    const row = rowsOf(swing!, { mass: 0.5, centre: [0, -0.75, 0], squares: [0, 0, 0] })[0]!
    // g is printed to 5 digits and T to 5: half a last digit of each is 7e-5 s.
    expect(Math.abs(row.residual)).toBeLessThan(7e-5)
  })

  test("example 15.4: a beam hung at its end that swings at 0.50 Hz is 1.49 m long", () => {
    const length = 1.49
    const row = (at: number) =>
      rowsOf(swung(3, [0, 0, 0], [0, at / 2, 0], 2)[3]!, {
        mass: 3,
        centre: [0, 0, 0],
        squares: [0, 0, at ** 2 / 12],
      })[0]!
    // The printed length is rounded to a centimetre: the period of 2 s lies between those of half a centimetre either way.
    expect(row(length - 0.005).residual).toBeGreaterThan(0)
    expect(row(length + 0.005).residual).toBeLessThan(0)
  })

  test("example 15.5: a rod of 4.00 kg and 0.30 m twisting on 4.73 N·m does so in 0.50 s", () => {
    // Two lines of length l, r from the middle, twist it back with m g r²/l; made to be the 4.7374 that the book truncates.
    const lineLength = 1.5
    const radius = Math.sqrt((4.73741 * lineLength) / (4 * 9.80665))
    const lines = { lineLength, radius, radiusError: 1e-6 }
    const rod = { mass: 4, centre: [0, 0, 0], squares: [0.3 ** 2 / 12, 0.3 ** 2 / 12, 0] } as const
    const [row] = rowsOf({ kind: "twist", ...alone, axis: [0, 1, 0], period: 0.5, ...lines, ...sharp }, rod)
    expect(Math.abs(row!.residual)).toBeLessThan(1e-6)
  })
})

describe("the long swing, T/T₀ = (2/π)K(sin²(θ/2))", () => {
  test.each([
    [1, 1.0000190389],
    [5, 1.0004761725],
    [10, 1.0019071881],
    [15, 1.0043005792],
    [30, 1.0174087976],
    [60, 1.0731820071],
    [90, 1.180340599],
    [120, 1.3728805006],
    [150, 1.7622037295],
    [170, 2.4393627197],
    [179, 3.9010651604],
  ])("at %s° it is %s (derived to 10 digits; the table at calculatorlib.com has the same 6)", (degrees, stretch) => {
    const half = (degrees * Math.PI) / 360
    expect(Math.abs(amplitudeStretch(2 * half) - stretch)).toBeLessThan(6e-11)
    expectNear([amplitudeStretch(2 * half)], [(2 / Math.PI) * ellipk(Math.sin(half) ** 2)])
  })

  test("a pendulum of 1 m where g is 9.81 takes 2.014 … s at 20° as published (physics.gmu.edu/~mrseth, pendulum table)", () => {
    const small = 2 * Math.PI * Math.sqrt(1 / 9.81)
    expect(Math.abs(small * amplitudeStretch((20 * Math.PI) / 180) - 2.021451258)).toBeLessThan(1e-9)
    expect(Math.abs(small * amplitudeStretch((60 * Math.PI) / 180) - 2.152874667)).toBeLessThan(1e-9)
  })

  test("upside down it never comes back", () => {
    expect(amplitudeStretch(0)).toBe(1)
    expect(amplitudeStretch(Math.PI)).toBeGreaterThan(20)
  })
})

describe("hung on lines, I = m g r² T²/(4π² l)", () => {
  const found = (mass: number, twist: { radius: number; lineLength: number; period: number }) => {
    const seen: Observation[] = [
      { kind: "scale", ...alone, mass, ...sharp },
      { kind: "twist", ...alone, axis: [0, 1, 0], ...twist, radiusError: 1e-7, ...sharp },
    ]
    const { body } = fitBody(seen, { ...guess(1), squares: [0.05, 0.05, 0.05] }, decompose)
    return body.mass * body.squares[1]
  }

  test("two lines (University of Hyderabad, laboratory manual): a rod of 1.2 kg and 0.9 m, lines 0.30 m from its middle and 1.5 m long, twists in 2.1281184 s (derived): 0.081 kg·m²", () => {
    expectNear([found(1.2, { radius: 0.3, lineLength: 1.5, period: 2.1281184 })], [0.081], 1e-7)
    expectNear([momentsOf(slender(1.2, [-0.45, 0, 0], [0.45, 0, 0])).aboutOrigin.yy], [0.081])
  })

  test("three lines (COEP virtual laboratory): 2.5 kg, lines 0.25 m off and 2 m long, twisting in 1.9 s: 0.0700580703 kg·m² (derived)", () => {
    expectNear([found(2.5, { radius: 0.25, lineLength: 2, period: 1.9 })], [0.0700580703], 1e-8)
  })
})
