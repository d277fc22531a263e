import { describe, expect, test } from "vitest"
import {
  angularMomentum,
  dampingFor,
  type Hold,
  landing,
  noseDrop,
  type Nudge,
  nudged,
  nudgeEnergy,
  stringStiffness,
} from "../../../src/core/nudge"
import type { Tensor, Vec3 } from "../../../src/core/solids"
import { Solver } from "../../tools/odex.mjs"
import { expectNear } from "../near"

/** A bow with a drooped side rod: every pair of axes is coupled. */
const bow: Tensor = { xx: 0.13, yy: 0.37, zz: 0.41, xy: 0.023, xz: -0.017, yz: 0.029 }
const straight: Tensor = { ...bow, xy: 0, xz: 0, yz: 0 }
const NONE: Vec3 = [0, 0, 0]
const free: Hold = { stiffness: NONE, damping: NONE }
const held: Hold = { stiffness: [3, 7, 11], damping: [0.05, 0.11, 0.13] }
const knock = (...impulse: Vec3): Nudge => ({ impulse, push: NONE, lasting: 0 })

/** Propagation by an exponential: rounding of a few hundred 7 × 7 products. */
const EXACT = 1e-12

describe("a bow nudged about one axis by itself", () => {
  test("free, turns on at the rate the impulse gives it", () => {
    const { angles, rates } = nudged(straight, free, knock(0, 0.02, 0), 0.01, 51)
    expectNear([angles[50]![1], rates[50]![1]], [(0.02 / 0.37) * 0.5, 0.02 / 0.37], EXACT)
    expect([angles[50]![0], angles[50]![2]]).toEqual([0, 0])
  })

  test("under a steady push gains ½·τ/I·t² and then goes on evenly, wherever between two samples the push ends", () => {
    const push: Nudge = { impulse: NONE, push: [0, 0, 0.3], lasting: 0.117 }
    const { angles } = nudged(straight, free, push, 0.05, 8)
    angles.forEach(([, , pitch], k) => {
      const [t, pushed] = [k * 0.05, Math.min(k * 0.05, 0.117)]
      const rate = (0.3 / 0.41) * pushed
      expectNear([pitch], [(rate * pushed) / 2 + rate * (t - pushed)], EXACT)
    })
  })

  test("held, swings as the textbook oscillator does: less than critically damped, critically, and more", () => {
    // φ(t) of I·φ̈ + C·φ̇ + K·φ = 0 with φ(0) = 0, φ̇(0) = J/I; any text on vibrations, here from memory.
    const [inertia, stiffness, impulse, t] = [0.37, 7, 0.02, 0.23]
    const natural = Math.sqrt(stiffness / inertia)
    const start = impulse / inertia
    const wanted = (ratio: number) => {
      if (ratio === 1) return start * t * Math.exp(-natural * t)
      const own = natural * Math.sqrt(Math.abs(1 - ratio ** 2))
      const wave = ratio < 1 ? Math.sin(own * t) : Math.sinh(own * t)
      return (start / own) * wave * Math.exp(-ratio * natural * t)
    }
    for (const ratio of [0, 0.2, 1, 3]) {
      const hold: Hold = { stiffness: [0, stiffness, 0], damping: [0, dampingFor(ratio, stiffness, inertia), 0] }
      const { angles } = nudged(straight, hold, knock(0, impulse, 0), t / 5, 6)
      expectNear([angles[5]![1]], [wanted(ratio)], EXACT)
    }
  })

  test("worked by hand: 0.4 kg·m² held by 10 N·m/rad swings at 5 rad/s and comes to J/(I·ω) a quarter period on", () => {
    const tensor: Tensor = { ...straight, zz: 0.4 }
    const { angles, rates } = nudged(tensor, { ...free, stiffness: [0, 0, 10] }, knock(0, 0, 0.02), Math.PI / 10, 2)
    expect(angles[1]![2]).toBeCloseTo(0.01, 13)
    expect(rates[1]![2]).toBeCloseTo(0, 13)
  })
})

describe("a bow whose axes are coupled", () => {
  test("turns about all of them, as an independent integrator says", () => {
    // Check: npm odex 2.0.4, after Hairer, Nørsett and Wanner, Solving Ordinary Differential Equations I, II.9.
    const nudge: Nudge = { impulse: [0.002, 0.013, -0.007], push: [0.05, -0.11, 0.07], lasting: 0.3 }
    const { angles, rates } = nudged(bow, held, nudge, 0.03, 11)
    const solver = new Solver(6)
    solver.absoluteTolerance = solver.relativeTolerance = 1e-13
    const start = solveFor(bow, nudge.impulse)
    const { y } = solver.solve(
      (_t: number, [a, b, c, u, v, w]: number[]) => {
        const [angle, rate] = [[a, b, c] as unknown as Vec3, [u, v, w] as unknown as Vec3]
        const moment = [0, 1, 2].map(
          (k) => nudge.push[k]! - held.stiffness[k]! * angle[k]! - held.damping[k]! * rate[k]!,
        )
        return [...rate, ...solveFor(bow, moment as unknown as Vec3)]
      },
      0,
      [0, 0, 0, ...start],
      0.3,
    ) as { y: number[] }
    expectNear([...angles[10]!, ...rates[10]!], y, 1e-10)
    for (const angle of angles[10]!) expect(Math.abs(angle)).toBeGreaterThan(1e-4)
  })

  test("keeps its angular momentum while nothing holds or pushes it", () => {
    const { rates } = nudged(bow, free, knock(0.002, 0.013, -0.007), 0.07, 200)
    for (const rate of rates) expectNear(angularMomentum(bow, rate), [0.002, 0.013, -0.007], EXACT)
  })

  test("keeps its energy while nothing damps it, and loses some at every step where something does", () => {
    const undamped: Hold = { ...held, damping: NONE }
    const energies = (hold: Hold) => {
      const { angles, rates } = nudged(bow, hold, knock(0.002, 0.013, -0.007), 0.01, 500)
      return angles.map((angle, k) => nudgeEnergy(bow, hold, angle, rates[k]!))
    }
    const kept = energies(undamped)
    expectNear(
      kept,
      kept.map(() => kept[0]!),
      1e-11,
    )
    const lost = energies(held)
    lost.slice(1).forEach((energy, k) => expect(energy).toBeLessThan(lost[k]!))
  })

  test("gives the same angles at the same times for any step", () => {
    const nudge: Nudge = { impulse: [0.002, 0.013, -0.007], push: [0.05, -0.11, 0.07], lasting: 0.1 }
    const coarse = nudged(bow, held, nudge, 0.07, 4).angles[3]!
    expectNear(nudged(bow, held, nudge, 0.03, 8).angles[7]!, coarse, EXACT)
  })
})

test("a nudge is refused for what no bow is or does", () => {
  const refused =
    (tensor: Tensor, hold: Hold, nudge: Nudge, step = 0.01) =>
    () =>
      nudged(tensor, hold, nudge, step, 2)
  expect(refused({ ...bow, xx: 0 }, free, knock(0, 0, 1))).toThrow(RangeError)
  expect(refused({ ...straight, xx: -0.2, yy: -0.3 }, free, knock(0, 0, 1))).toThrow(RangeError)
  expect(refused(bow, { ...free, stiffness: [0, -1, 0] }, knock(0, 0, 1))).toThrow(RangeError)
  expect(refused(bow, { ...free, damping: [0, 0, Number.NaN] }, knock(0, 0, 1))).toThrow(RangeError)
  expect(refused(bow, free, { ...knock(0, 0, 1), lasting: -1 })).toThrow(RangeError)
  expect(refused(bow, free, knock(0, 0, Number.POSITIVE_INFINITY))).toThrow()
  expect(refused(bow, free, knock(0, 0, 1), 0)).toThrow(RangeError)
})

test("the drawn string holds the bow as two tensions pulling at an angle: 2·T·L²/ℓ", () => {
  // A turn φ carries a string end aside by L·φ, small beside ℓ; each tension pulls it back with T·L·φ/ℓ, on the arm L.
  const [tension, length, tip, turn] = [130, 0.7, 0.85, 1e-6]
  const aside = length * Math.sin(turn)
  const pull = 2 * tension * Math.sin(Math.atan2(aside, tip)) * length
  expect(stringStiffness(tension, length, tip) * turn).toBeCloseTo(pull, 12)
})

test("the nose drops as a body does that falls about the grip, worked by hand", () => {
  // 2.5 N·m on 0.5 kg·m²: 5 rad/s², so 0.1 rad after 0.2 s.
  expect(noseDrop(2.5, 0.5, 0.2)).toBeCloseTo(0.1, 15)
})

test("an arrow goes where the turned bow points: yaw to the left is left, pitch up is up, roll is nothing", () => {
  expect(landing([0.3, 0, 0], 70)).toEqual({ right: 0, up: 0 })
  const { right, up } = landing([0, 0.002, 0.003], 70)
  expect(right).toBeCloseTo(-0.14, 5)
  expect(up).toBeCloseTo(0.21, 5)
})

/** T⁻¹·m by Cramer's rule: another way than the engine's. */
function solveFor(t: Tensor, m: Vec3): number[] {
  const rows = [
    [t.xx, t.xy, t.xz],
    [t.xy, t.yy, t.yz],
    [t.xz, t.yz, t.zz],
  ]
  const determinant = (a: number[][]) =>
    a[0]![0]! * (a[1]![1]! * a[2]![2]! - a[1]![2]! * a[2]![1]!) -
    a[0]![1]! * (a[1]![0]! * a[2]![2]! - a[1]![2]! * a[2]![0]!) +
    a[0]![2]! * (a[1]![0]! * a[2]![1]! - a[1]![1]! * a[2]![0]!)
  const whole = determinant(rows)
  return [0, 1, 2].map(
    (column) => determinant(rows.map((row, i) => row.map((v, j) => (j === column ? m[i]! : v)))) / whole,
  )
}
