import { expect, test } from "vitest"
import { GRAVITY } from "../../../../src/core/constants"
import { gravityInBow, poseRotation } from "../../../../src/core/balance"
import { swingRest } from "../../../../src/core/swing"
import { holdStill, raise, startMotion, stepMotion, traceMotion } from "../../../../src/core/swing/motion"
import { bowSwing, DEGREE, FRAME, hung, LEVEL, smallSwing } from "./pendulums"

/** Largest moment of gravity about the joint, N·m. */
const weight = (model: ReturnType<typeof hung>) => model.mass * GRAVITY * model.arm

const FRICTION = 0.023
const dry = hung(bowSwing(), { friction: FRICTION })
const band = Math.asin(FRICTION / weight(dry))

test("dry friction holds a weight anywhere within asin(τ/(M g l)) of plumb", () => {
  for (const part of [-0.999, -0.5, 0.3, 0.999]) {
    const state = startMotion(dry, LEVEL, band * part)
    stepMotion(dry, LEVEL, state, 3)
    expect(state.angle).toBe(band * part)
    expect(state.rate).toBe(0)
  }
})

test("just outside that band it moves", () => {
  for (const part of [-1.001, 1.001]) {
    const state = startMotion(dry, LEVEL, band * part)
    stepMotion(dry, LEVEL, state, 3)
    expect(Math.abs(state.angle)).toBeLessThan(band)
  }
})

test("from any height it comes to rest inside the band and stays", () => {
  for (const degrees of [17, 53, 111, 173]) {
    const state = startMotion(dry, LEVEL, degrees * DEGREE)
    stepMotion(dry, LEVEL, state, 60)
    expect(state.rate).toBe(0)
    expect(Math.abs(state.angle)).toBeLessThanOrEqual(band)
    const rested = state.angle
    stepMotion(dry, LEVEL, state, 7)
    expect(state.angle).toBe(rested)
  }
})

test("the same friction holds it upside down, as near to upright as it holds near plumb", () => {
  const state = startMotion(dry, LEVEL, Math.PI - 0.999 * band)
  stepMotion(dry, LEVEL, state, 3)
  expect(state.angle).toBe(Math.PI - 0.999 * band)
})

test("each small half swing loses 2τ/(M g l) to dry friction and takes as long as without it", () => {
  const friction = 2e-6
  const model = hung(bowSwing(), { friction })
  const loss = (2 * friction) / weight(model)
  const amplitude = 7.3 * loss
  const half = Math.PI / smallSwing(model)
  const state = startMotion(model, LEVEL, amplitude)
  for (let count = 1; count <= 3; count++) {
    stepMotion(model, LEVEL, state, half)
    const expected = (amplitude - count * loss) * (count % 2 === 0 ? 1 : -1)
    expect(Math.abs(state.angle - expected)).toBeLessThanOrEqual(1e-7 * amplitude)
  }
  // 7.3 half losses' worth ends after the swing that leaves less than half a loss: |θ| ≤ τ/(M g l).
  stepMotion(model, LEVEL, state, 5 * half)
  expect(Math.abs(Math.abs(state.angle) - 0.3 * loss)).toBeLessThanOrEqual(1e-7 * amplitude)
  expect(state.rate).toBe(0)
})

test("friction carries the weight with the bow until the bow has turned it out of the band", () => {
  const manoeuvre = raise(0, 20 * DEGREE, 15 * DEGREE)
  const trace = traceMotion(dry, manoeuvre, 3, FRAME)
  expect(trace.held[0]).toBe(1)
  expect(trace.inBow[1]).toBe(0)
  const loosened = trace.held.indexOf(0)
  expect(loosened).toBeGreaterThan(1)
  expect(trace.slope[loosened - 1]).toBeLessThan(band * 1.1)
  expect(trace.held.at(-1)).toBe(1)
  expect(Math.abs(trace.fromPlumb.at(-1)!)).toBeLessThanOrEqual(band)
  expect(trace.inBow.at(-1)).toBeLessThan(0)
})

test("a stop is struck without rebound and holds as long as the weight leans on it", () => {
  const model = hung(bowSwing({ stop: 25 * DEGREE }))
  const manoeuvre = raise(0, 41 * DEGREE, 40 * DEGREE)
  const trace = traceMotion(model, manoeuvre, 5, FRAME)
  expect(Math.max(...trace.inBow.map(Math.abs))).toBeLessThanOrEqual(25 * DEGREE)
  expect(trace.inBow.at(-1)).toBe(-25 * DEGREE)
  expect(trace.held.at(-1)).toBe(2)
})

test("a stop lets go when the bow comes back, and the weight hangs plumb again", () => {
  const model = hung(bowSwing({ stop: 25 * DEGREE }), { damping: 0.01 })
  const up = holdStill(41 * DEGREE)
  const state = startMotion(model, up)
  expect(state.angle).toBe(-25 * DEGREE)
  const down = raise(41 * DEGREE, 10 * DEGREE, 30 * DEGREE)
  stepMotion(model, down, state, 20)
  expect(state.angle).toBeCloseTo(-10 * DEGREE, 9)
})

test("a stop of zero locks the weight in the bow", () => {
  const model = hung(bowSwing({ stop: 0 }))
  const trace = traceMotion(model, raise(-30 * DEGREE, 30 * DEGREE, 200 * DEGREE), 2, FRAME)
  expect(trace.inBow.every((angle) => angle === 0)).toBe(true)
  for (let index = 0; index < trace.time.length; index++) {
    expect(trace.moment[index]).toBe(trace.lockedMoment[index])
  }
})

test("a stop of half a turn is none: a hard swing goes right over", () => {
  const model = hung(bowSwing())
  const state = startMotion(model, LEVEL)
  state.rate = 2.3 * smallSwing(model)
  stepMotion(model, LEVEL, state, 5)
  expect(state.angle).toBeGreaterThan(2 * Math.PI)
})

test("a weight of no mass stays where it is", () => {
  const model = hung(bowSwing({ stemMass: 0, bobMass: 0 }))
  const trace = traceMotion(model, raise(0, 0.5, 1), 2, FRAME)
  expect(trace.inBow.every((angle) => angle === 0)).toBe(true)
  expect(trace.moment.every((moment) => moment === 0)).toBe(true)
})

test.each([
  ["hinge", -37, 0, 80],
  ["hinge", 37, 29, 80],
  ["hinge", 52, -11, 30],
  ["ball", 37, 0, 80],
  ["ball", -52, 0, 30],
  ["ball", 31, 17, 80],
] as const)(
  "a %s settles on a slope of %d° canted %d° where statics says it rests, stop %d°",
  (joint, slope, cant, stop) => {
    const model = hung(bowSwing({ joint, stop: stop * DEGREE }), { cant: cant * DEGREE, damping: 0.02 })
    const trace = traceMotion(model, raise(0, slope * DEGREE, 60 * DEGREE), 30, 1)
    const rest = swingRest(gravityInBow(poseRotation(slope * DEGREE, cant * DEGREE)), joint, stop * DEGREE)
    const angle = trace.inBow.at(-1)!
    // A ball swings in the upright plane, which the cant turns about the bow's x.
    const turned = joint === "ball" ? cant * DEGREE : 0
    const settled = [Math.sin(angle), -Math.cos(angle) * Math.cos(turned), Math.cos(angle) * Math.sin(turned)]
    settled.forEach((component, axis) => {
      expect(Math.abs(component - rest.direction[axis]!)).toBeLessThanOrEqual(1e-9)
    })
    expect(trace.held.at(-1)).toBe(rest.onStop ? 2 : 0)
  },
)

test("a ball canted past its stop is refused, a hinge is not", () => {
  const swing = bowSwing({ stop: 20 * DEGREE })
  expect(() => hung({ ...swing, joint: "ball" }, { cant: 23 * DEGREE })).toThrow(RangeError)
  expect(() => hung(swing, { cant: 23 * DEGREE })).not.toThrow()
})

test("impossible joints and time steps are refused", () => {
  expect(() => hung(bowSwing(), { friction: -1 })).toThrow(RangeError)
  expect(() => hung(bowSwing(), { damping: Number.NaN })).toThrow(RangeError)
  expect(() => hung(bowSwing(), { cant: 2 })).toThrow(RangeError)
  const state = startMotion(dry, LEVEL)
  expect(() => stepMotion(dry, LEVEL, state, -1)).toThrow(RangeError)
  expect(() => stepMotion(dry, LEVEL, state, Number.NaN)).toThrow(RangeError)
  expect(() => traceMotion(dry, LEVEL, 2, 0)).toThrow(RangeError)
  expect(() => traceMotion(dry, LEVEL, 2e6, 1e-3)).toThrow(RangeError)
})
