/**
 * The motion of swing weights against published pendulums.
 *
 * Sources: OpenStax University Physics vol. 1, chapter 15.4 and 15.5 (CC BY 4.0); the large-amplitude period
 * T/T0 = (2/π) K(sin²(θ/2)) at ten digits (computed with mpmath, agreeing in six with the pendulum table of
 * calculatorlib.com) and, as a second program, @stdlib's ellipk; the log decrement δ = 2πζ/√(1 - ζ²) (pont.ist).
 */
import ellipk from "@stdlib/math-base-special-ellipk"
import { expect, test } from "vitest"
import { GRAVITY } from "../../src/core/constants"
import { startMotion, type MotionState } from "../../src/core/swing/motion"
import {
  DEGREE,
  hung,
  LEVEL,
  bowSwing,
  measuredPeriod,
  pointSwing,
  rodSwing,
  smallSwing,
  untilSignChange,
} from "../core/swing/motion/pendulums"

/** Small enough that the period is that of the small swing within 2e-9 (θ²/16). */
const SMALL = 0.01 * DEGREE
/** A period from the integrator and a formula, relative. */
const PERIOD = 1e-8

/**
 * The same a degree from upside down, where the period goes with the logarithm of what is left to the top: 8e-5 of the
 * energy, so a rounding of the energy counts ten thousand times.
 */
const PERIOD_NEAR_TOP = 1e-6

const near = (actual: number, wanted: number, relative: number) =>
  expect(Math.abs(actual / wanted - 1), `${actual} against ${wanted}`).toBeLessThanOrEqual(relative)

test("a point 0.75 m below its joint swings in 1.7357 s where g is 9.8281 m/s² (OpenStax UP1, example 15.3)", () => {
  // The bench's g is standard gravity; a pendulum's period goes with 1/√g exactly.
  const period = measuredPeriod(hung(pointSwing(0.75)), SMALL) * Math.sqrt(GRAVITY / 9.8281)
  expect(period).toBeCloseTo(1.7357, 4)
})

test("a uniform beam of 1.49 m swings about its end at 0.50 Hz (OpenStax UP1, example 15.4)", () => {
  const period = measuredPeriod(hung(rodSwing(1.49, 1.49 / 2)), SMALL) * Math.sqrt(GRAVITY / 9.8)
  expect(1 / period).toBeCloseTo(0.5, 3)
})

test("a thin rod of 0.30 m hung by its end takes 0.8972935138 s (T = 2π√(I/(m g d)), OpenStax UP1, 15.4)", () => {
  near(measuredPeriod(hung(rodSwing(0.3, 0.15)), SMALL), 0.8972935138, PERIOD)
})

test("a rod of 1 m swings fastest when hung its radius of gyration from its middle, in 1.5245413805 s", () => {
  const radius = 1 / Math.sqrt(12)
  const shortest = measuredPeriod(hung(rodSwing(1, radius)), SMALL)
  near(shortest, 1.5245413805, PERIOD)
  expect(measuredPeriod(hung(rodSwing(1, radius * 0.97)), SMALL)).toBeGreaterThan(shortest)
  expect(measuredPeriod(hung(rodSwing(1, radius * 1.03)), SMALL)).toBeGreaterThan(shortest)
})

const TABLE: [number, number][] = [
  [1, 1.0000190389],
  [5, 1.0004761725],
  [10, 1.0019071881],
  [15, 1.0043005792],
  [20, 1.0076690258],
  [30, 1.0174087976],
  [45, 1.0399733432],
  [60, 1.0731820071],
  [75, 1.1189590386],
  [90, 1.180340599],
  [120, 1.3728805006],
  [135, 1.5279475882],
  [150, 1.7622037295],
  [170, 2.4393627197],
  [179, 3.9010651604],
]

test.each(TABLE)(
  "let go at %d°, the period is %d of the small swing's (mpmath; calculatorlib.com)",
  (degrees, ratio) => {
    const model = hung(bowSwing())
    const period = (measuredPeriod(model, degrees * DEGREE) * smallSwing(model)) / (2 * Math.PI)
    const tolerance = degrees > 175 ? PERIOD_NEAR_TOP : PERIOD
    near(period, ratio, tolerance)
    near(period, (2 / Math.PI) * ellipk(Math.sin((degrees * DEGREE) / 2) ** 2), tolerance)
  },
)

test.each([
  [10, 2.009892627],
  [40, 2.068937852],
  [80, 2.281885924],
])("a 1 m pendulum at %d° takes %d s where g is 9.81 m/s² (physics.gmu.edu/~mrseth, pass 6)", (degrees, seconds) => {
  const period = measuredPeriod(hung(pointSwing(1)), degrees * DEGREE) * Math.sqrt(GRAVITY / 9.81)
  near(period, seconds, PERIOD)
})

const rate = (state: MotionState) => state.rate

/** Amplitudes a whole cycle apart, from the reversals on the side of the start. */
function cycles(damping: number, amplitude: number, count: number): number[] {
  const model = hung(bowSwing(), { damping })
  const state = startMotion(model, LEVEL, amplitude)
  return Array.from({ length: count }, () => {
    untilSignChange(model, state, rate)
    untilSignChange(model, state, rate)
    return state.angle
  })
}

/** c that gives a damping ratio ζ: 2 ζ ω0 I. */
const dampingFor = (ratio: number): number => {
  const model = hung(bowSwing())
  return 2 * ratio * smallSwing(model) * model.aboutJoint
}

test("swings that fall from 20 to 2 in 100 cycles have a log decrement of 0.0230 (assignmentexpert 36839)", () => {
  // ζ = δ/√(4π² + δ²) with δ = ln 10/100.
  const swings = cycles(dampingFor(0.00366465), 0.2 * DEGREE, 100)
  near(swings.at(-1)! / (0.2 * DEGREE), 0.1, 1e-5)
  near(Math.log(swings[37]! / swings[38]!), 0.0230258509, 1e-5)
})

test.each([
  [0.01, 0.0628349949],
  [0.05, 0.3145527025],
  [0.1, 0.6314838834],
  [0.2, 1.2825498302],
])("a damping ratio of %d gives a log decrement of %d (δ = 2πζ/√(1 - ζ²), pont.ist)", (ratio, decrement) => {
  const [first, second] = cycles(dampingFor(ratio), SMALL, 2)
  near(Math.log(first! / second!), decrement, 1e-7)
})

test.each([0.02, 0.3, 0.7])("damped by %d of critical it swings at √(ω0² - (c/2I)²) (OpenStax UP1, 15.5)", (ratio) => {
  const damping = dampingFor(ratio)
  const model = hung(bowSwing(), { damping })
  const expected = Math.sqrt(smallSwing(model) ** 2 - (damping / (2 * model.aboutJoint)) ** 2)
  const frequency = (2 * Math.PI) / measuredPeriod(model, SMALL)
  near(frequency, expected, PERIOD)
})
