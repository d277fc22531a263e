import { expect, test } from "vitest"
import { holdStill, startMotion, stepMotion, swingEnergy } from "../../../../src/core/swing/motion"
import { bowSwing, DEGREE, FRAME, hung, smallSwing } from "./pendulums"

/** Relative to the energy of the swing. */
const DRIFT = 1e-6

const stillAt = (slope: number, degrees: number, cant: number, size: number) => {
  const swing = bowSwing({ stemLength: 0.17 * size, bobRadius: 0.016 * size, bobLength: 0.029 * size })
  const model = hung(swing, { cant: cant * DEGREE })
  const manoeuvre = holdStill(slope * DEGREE)
  const state = startMotion(model, manoeuvre, degrees * DEGREE)
  const energy = () => swingEnergy(model, state.angle, state.rate, slope * DEGREE)
  return { model, manoeuvre, state, energy }
}

test.each([
  [0, 5, 0, 1],
  [0, 170, 0, 1],
  [0, 170, 0, 0.05],
  [0, 170, 0, 5],
  [23, 97, 31, 1],
])(
  "undamped on a slope of %d°, from %d°, canted %d°, size %d, no more than a millionth of its energy drifts in 100 periods",
  (slope, degrees, cant, size) => {
    const { model, manoeuvre, state, energy } = stillAt(slope, degrees, cant, size)
    const first = energy()
    expect(first).toBeGreaterThan(0)
    let worst = 0
    // The longest period here, at 170°, is 2.44 small swings (elliptic integral); the canted plane's is no longer.
    const until = (100 * 2.44 * 2 * Math.PI) / smallSwing(model)
    while (state.time < until) {
      stepMotion(model, manoeuvre, state, FRAME)
      worst = Math.max(worst, Math.abs(energy() / first - 1))
    }
    expect(worst).toBeLessThanOrEqual(DRIFT)
  },
)

test("damping only takes energy away on a bow held still", () => {
  const model = hung(bowSwing(), { damping: 0.003 })
  const manoeuvre = holdStill(0)
  const state = startMotion(model, manoeuvre, 130 * DEGREE)
  let before = swingEnergy(model, state.angle, state.rate, 0)
  for (let frame = 0; frame < 300; frame++) {
    stepMotion(model, manoeuvre, state, FRAME)
    const now = swingEnergy(model, state.angle, state.rate, 0)
    expect(now).toBeLessThanOrEqual(before)
    before = now
  }
})

test("the heaviest damping a scene may ask for creeps instead of blowing up", () => {
  const model = hung(bowSwing({ stemLength: 0.02, bobMass: 0.01, stemMass: 0 }), { damping: 10 })
  const manoeuvre = holdStill(0)
  const state = startMotion(model, manoeuvre, 70 * DEGREE)
  stepMotion(model, manoeuvre, state, 7)
  // Overdamped: c θ̇ = -M g l sin θ, so tan(θ/2) falls as exp(-M g l t / c) once the short start is over.
  const weight = model.mass * 9.80665 * model.arm
  const expected = 2 * Math.atan(Math.tan(35 * DEGREE) * Math.exp((-weight * 7) / 10))
  expect(Math.abs(state.angle - expected)).toBeLessThanOrEqual(1e-8)
})
