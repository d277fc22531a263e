import { expect, test } from "vitest"
import { GRAVITY } from "../../src/core/constants"
import { fullDraw } from "../../src/scene/evaluate"
import { heldDrawn } from "../../src/scene/heldDrawn"
import type { Pose } from "../../src/scene/schema"
import { evaluationOf, sceneOf } from "../picture/pictures"
import { fullDocument } from "./documents"

const held = (pose: Partial<Pose>) =>
  evaluationOf({ ...sceneOf(fullDocument()), pose: { draw: 1, slopeDeg: 0, cantDeg: 0, ...pose } })

test("at brace nothing pulls and there is no drawn balance", () => {
  expect(heldDrawn(held({ draw: 0 }))).toBeNull()
})

test("level, upright and at full draw it is the full-draw figures", () => {
  const evaluation = held({})
  const { lift, netLift, balancedForward, gripShift } = evaluation.fullDraw
  const drawn = heldDrawn(evaluation)!
  expect(drawn.lift).toBeCloseTo(lift, 12)
  expect(drawn.netLift).toBeCloseTo(netLift, 12)
  expect(drawn.balancedForward).toBeCloseTo(balancedForward, 12)
  expect(drawn.gripShift).toBeCloseTo(gripShift, 12)
})

test("on a slope it is the full draw on that slope", () => {
  const evaluation = held({ slopeDeg: 23 })
  const steep = fullDraw(evaluation.scene, 23)
  expect(steep.ok && heldDrawn(evaluation)!.netLift).toBeCloseTo(steep.ok ? steep.value.netLift : Number.NaN, 12)
})

test("half drawn it has that draw's force and arm", () => {
  const evaluation = held({ draw: 0.5 })
  const { limbs } = evaluation.now
  const { nockHeightMm } = evaluation.scene.bow
  const elbow = (evaluation.scene.archer.elbowElevationDeg * Math.PI) / 180
  const arm = (nockHeightMm / 1e3) * Math.cos(elbow) - limbs.draw * Math.sin(elbow)
  expect(heldDrawn(evaluation)!.lift).toBeCloseTo(limbs.holdForce * arm, 12)
})

test("what the balance point must have at its balanced place is no net, at any pose", () => {
  for (const pose of [{ slopeDeg: -31 }, { draw: 0.3, slopeDeg: 17 }, { cantDeg: 19 }]) {
    const evaluation = held(pose)
    const { balancedForward, lift, netLift } = heldDrawn(evaluation)!
    const { mass, armForward } = evaluation.now
    expect(mass * GRAVITY * balancedForward).toBeCloseTo(lift, 12)
    expect(mass * GRAVITY * (balancedForward - armForward)).toBeCloseTo(netLift, 12)
  }
})

test("the lift of a canted bow counts with the cosine of its cant, and the hand's shift does not shrink with it", () => {
  const upright = heldDrawn(held({}))!
  const canted = heldDrawn(held({ cantDeg: 37 }))!
  expect(canted.lift / upright.lift).toBeCloseTo(Math.cos((37 * Math.PI) / 180), 12)
  const force = held({}).fullDraw.limbs.holdForce
  expect(canted.gripShift).toBeCloseTo(canted.netLift / (force * Math.cos((37 * Math.PI) / 180)), 12)
})
