/**
 * The moving bow. The equation is checked three ways that share no algebra with it: the textbook pendulum on a moving
 * support solved by odex (Hairer's extrapolation code), Lagrange's equation by differences for a canted bow, and the
 * moment on the grip as Σ r × m(a - g) over point masses followed through the world.
 */
import { Solver } from "../../../tools/odex.mjs"
import { expect, test } from "vitest"
import { poseRotation } from "../../../../src/core/balance"
import { GRAVITY } from "../../../../src/core/constants"
import { multiply, type Vec3 } from "../../../../src/core/solids"
import {
  holdStill,
  type Manoeuvre,
  type MotionModel,
  plumbAngle,
  raise,
  raiseOn,
  startMotion,
  stepMotion,
  traceMotion,
} from "../../../../src/core/swing/motion"
import { driveAt, newDrive, pullAt } from "../../../../src/core/swing/motion/drive"
import { movingMoment } from "../../../../src/core/swing/motion/reaction"
import { bowSwing, DEGREE, FRAME, hung } from "./pendulums"

const now = { slope: 0, rate: 0, acceleration: 0 }

/** ψ(t) of the textbook form, by odex at a tight tolerance. */
function textbook(model: MotionModel, [x, y]: Vec3, manoeuvre: Manoeuvre, first: number, until: number): number {
  const solver = new Solver(2)
  solver.absoluteTolerance = 1e-12
  solver.relativeTolerance = 1e-12
  solver.maxSteps = 100_000
  const slopeRate = (time: number, [psi, psiRate]: number[]) => {
    manoeuvre.at(time, now)
    const px = Math.cos(now.slope) * x - Math.sin(now.slope) * y
    const py = Math.sin(now.slope) * x + Math.cos(now.slope) * y
    const ax = -now.rate * now.rate * px - now.acceleration * py
    const ay = -now.rate * now.rate * py + now.acceleration * px
    const carried = ax * Math.cos(psi!) + (GRAVITY + ay) * Math.sin(psi!)
    const torque = -model.mass * model.arm * carried - model.damping * (psiRate! - now.rate)
    return [psiRate!, torque / model.aboutJoint]
  }
  return solver.solve(slopeRate, 0, [first, 0], until).y[0]!
}

/** Two programs' angles after two seconds, rad. */
const AGREEMENT = 2e-8
const HINGE: Vec3 = [0.73, -0.19, 0.11]

test.each([
  ["slow", 20, 0],
  ["quick", 150, 0],
  ["damped", 70, 0.004],
  ["stiffly damped", 70, 0.3],
])("raised %s, at %d°/s, it moves as the textbook's pendulum on a moving support", (_, rate, damping) => {
  const manoeuvre = raise(-17 * DEGREE, 31 * DEGREE, rate * DEGREE)
  const model = hung(bowSwing(), { hinge: HINGE, damping })
  const state = startMotion(model, manoeuvre, 12 * DEGREE)
  for (let frame = 1; frame <= 120; frame++) stepMotion(model, manoeuvre, state, FRAME)
  manoeuvre.at(state.time, now)
  const expected = textbook(model, HINGE, manoeuvre, (12 - 17) * DEGREE, state.time)
  expect(Math.abs(state.angle - plumbAngle(model, now.slope) - expected)).toBeLessThanOrEqual(AGREEMENT)
})

test("a ball on a canted bow moves as a pendulum in the upright plane at its joint's place there", () => {
  const cant = 33 * DEGREE
  const manoeuvre = raise(-17 * DEGREE, 31 * DEGREE, 90 * DEGREE)
  const model = hung(bowSwing({ joint: "ball" }), { hinge: HINGE, cant })
  const state = startMotion(model, manoeuvre)
  for (let frame = 1; frame <= 120; frame++) stepMotion(model, manoeuvre, state, FRAME)
  manoeuvre.at(state.time, now)
  const joint = multiply(poseRotation(0, cant), HINGE)
  const expected = textbook(model, joint, manoeuvre, 0, state.time)
  expect(Math.abs(state.angle - plumbAngle(model, now.slope) - expected)).toBeLessThanOrEqual(AGREEMENT)
})

/**
 * Point masses with the weight's mass, centre and inertia about every axis: a pair along the stem and two pairs across
 * it. Coordinates: along the stem from the joint, across it in the plane, across it out of the plane.
 */
function pointsOf(model: MotionModel): { mass: number; at: Vec3 }[] {
  const { mass, arm, acrossCentre, alongCentre } = model
  const across = Math.sqrt((1.5 * alongCentre) / mass)
  const along = Math.sqrt((3 * (acrossCentre - alongCentre / 2)) / mass)
  const sixth = mass / 6
  return [
    { mass: sixth, at: [arm + along, 0, 0] },
    { mass: sixth, at: [arm - along, 0, 0] },
    { mass: sixth, at: [arm, across, 0] },
    { mass: sixth, at: [arm, -across, 0] },
    { mass: sixth, at: [arm, 0, across] },
    { mass: sixth, at: [arm, 0, -across] },
  ]
}

/** A point of the weight in the world. */
function inWorld(hinge: Vec3, cant: number, slope: number, angle: number, [along, across, out]: Vec3): Vec3 {
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)]
  return multiply(poseRotation(slope, cant), [
    hinge[0] + along * sine + across * cosine,
    hinge[1] - along * cosine + across * sine,
    hinge[2] + out,
  ])
}

const CANT = 27 * DEGREE
const canted = () => hung(bowSwing({ bobRadius: 0.041 }), { hinge: HINGE, cant: CANT })
const lifting = raise(-11 * DEGREE, 43 * DEGREE, 110 * DEGREE)

/** Position of each mass as the bow goes through the manoeuvre and the weight turns evenly faster. */
const path = (angle: number, rate: number, acceleration: number, from: number) => (time: number, at: Vec3) => {
  lifting.at(time, now)
  const t = time - from
  return inWorld(HINGE, CANT, now.slope, angle + rate * t + (acceleration * t * t) / 2, at)
}

/** Second difference with step h; its own error here is about 1e-7 of the result. */
const H = 1e-4
const secondDifference = (before: number, at: number, after: number) => (before - 2 * at + after) / (H * H)

test("a hinge on a canted, quickly raised bow obeys d'Alembert for its masses about the hinge line", () => {
  const model = canted()
  for (const [time, angle, rate] of [
    [0.21, 0.7, -1.3],
    [0.33, -0.4, 5.1],
    [0.57, -1.9, 0.3],
  ] as const) {
    const drive = newDrive()
    driveAt(model, lifting, time, drive)
    const acceleration = pullAt(drive, angle)
    const where = path(angle, rate, acceleration, time)
    let virtualWork = 0
    let size = 0
    for (const { mass, at } of pointsOf(model)) {
      const [before, here, after] = [where(time - H, at), where(time, at), where(time + H, at)]
      lifting.at(time, now)
      const [plus, minus] = [angle + H, angle - H].map((each) => inWorld(HINGE, CANT, now.slope, each, at))
      for (const axis of [0, 1, 2] as const) {
        const force = mass * (secondDifference(before[axis], here[axis], after[axis]) + (axis === 1 ? GRAVITY : 0))
        const reach = (plus![axis] - minus![axis]) / (2 * H)
        virtualWork += force * reach
        size += Math.abs(force * reach)
      }
    }
    expect(size).toBeGreaterThan(0.01)
    expect(Math.abs(virtualWork)).toBeLessThanOrEqual(1e-6 * size)
  }
})

test("the moment on the grip is that of every mass's weight and inertia", () => {
  const model = canted()
  for (const [time, angle, rate, acceleration] of [
    [0.21, 0.7, -1.3, 7.3],
    [0.33, -0.4, 5.1, -11],
    [0.57, 0.2, 0, 0],
  ] as const) {
    const drive = newDrive()
    driveAt(model, lifting, time, drive)
    const where = path(angle, rate, acceleration, time)
    let noseDown = 0
    for (const { mass, at } of pointsOf(model)) {
      const [before, here, after] = [where(time - H, at), where(time, at), where(time + H, at)]
      const forward = mass * secondDifference(before[0], here[0], after[0])
      const up = mass * (secondDifference(before[1], here[1], after[1]) + GRAVITY)
      noseDown += here[0] * up - here[1] * forward
    }
    const actual = movingMoment(model, angle, rate, acceleration, drive)
    expect(Math.abs(actual - noseDown)).toBeLessThanOrEqual(1e-6 * Math.abs(noseDown))
  }
})

test("on a bow held still at rest, both moments are the weight's lever, plumb below its hinge", () => {
  const model = hung(bowSwing(), { hinge: HINGE })
  const slope = 21 * DEGREE
  const trace = traceMotion(model, holdStill(slope), 2, FRAME)
  const lever = model.mass * GRAVITY * (HINGE[0] * Math.cos(slope) - HINGE[1] * Math.sin(slope))
  expect(trace.moment.at(-1)).toBeCloseTo(lever, 12)
  expect(trace.weightMoment.at(-1)).toBeCloseTo(lever, 12)
})

test("with the front raised the free weight hangs toward the archer in the bow and the locked one does not", () => {
  const model = hung(bowSwing(), { hinge: HINGE, damping: 0.02 })
  const trace = traceMotion(model, raise(0, 30 * DEGREE, 60 * DEGREE), 20, FRAME)
  expect(trace.inBow.at(-1)).toBeCloseTo(-30 * DEGREE, 9)
  expect(trace.fromPlumb.at(-1)).toBeCloseTo(0, 9)
  // A stem fixed in the bow swings its bob forward as the front goes up: heavier in front than the free one.
  expect(trace.lockedWeightMoment.at(-1)! - trace.weightMoment.at(-1)!).toBeCloseTo(
    model.mass * GRAVITY * model.arm * Math.sin(30 * DEGREE),
    9,
  )
})

test("a trace samples from zero to the end, evenly, and does not depend on how it is sampled", () => {
  const model = hung(bowSwing(), { hinge: HINGE })
  const manoeuvre = raiseOn(raise(0, 0.4, 1), 0.2, -0.3, 1)
  const coarse = traceMotion(model, manoeuvre, 2, 0.1)
  const fine = traceMotion(model, manoeuvre, 2, 0.02)
  expect(coarse.time).toHaveLength(21)
  expect(coarse.time.at(-1)).toBeCloseTo(2, 14)
  expect(fine.inBow[100]).toBeCloseTo(coarse.inBow[20]!, 8)
  expect(traceMotion(model, manoeuvre, 2, 0.1)).toEqual(coarse)
})

test("halving the step takes the error of a driven, damped weight down sixteenfold, the manoeuvre's joins included", () => {
  const model = hung(bowSwing(), { hinge: HINGE, damping: 0.004 })
  const manoeuvre = raiseOn(raise(0, 0.4, 1), 0.2, -0.3, 1)
  const angleWith = (step: number) => {
    const state = startMotion(model, manoeuvre)
    stepMotion({ ...model, step }, manoeuvre, state, 2)
    return state.angle
  }
  const [coarse, middle, fine] = [angleWith(1 / 200), angleWith(1 / 400), angleWith(1 / 800)]
  const order = Math.log2(Math.abs((coarse - middle) / (middle - fine)))
  expect(order).toBeGreaterThan(3.8)
  expect(order).toBeLessThan(4.2)
})

test("joins are given in order and end where the bow comes to rest", () => {
  const manoeuvre = raiseOn(raiseOn(raise(0, 0.4, 1), 0.2, -0.3, 1), 0.5, 0.1, 2)
  expect(manoeuvre.joins).toEqual([...manoeuvre.joins].sort((a, b) => a - b))
  expect(manoeuvre.joins.slice(0, 3)).toEqual([0, 0.2, 0.5])
  expect(manoeuvre.joins.at(-1)).toBe(manoeuvre.end)
})
