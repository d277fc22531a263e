import { expect, test } from "vitest"
import { multiply } from "../../src/core/solids"
import { GRIP_REACH, SHIFT_DRAWN } from "../../src/describe/drawnWords"
import { drawnPlaces } from "../../src/picture/drawnPlaces"
import { heldDrawn } from "../../src/scene/heldDrawn"
import { fullDocument } from "../scene/documents"
import { evaluationOf, sceneOf } from "./pictures"

const evaluation = evaluationOf({ ...sceneOf(fullDocument()), pose: { draw: 1, slopeDeg: 23, cantDeg: 7 } })
const drawn = heldDrawn(evaluation)!
const places = drawnPlaces(evaluation.now, drawn)

test("the balanced place is level with the balance point, as far ahead in the world as it has to be", () => {
  const centre = multiply(evaluation.now.rotation, evaluation.now.centre)
  expect(places.balance).toEqual(centre)
  expect(places.balanced).toEqual([drawn.balancedForward, centre[1], centre[2]])
  expect(places.beyond).toBe(false)
})

test("weight and lift are arrows of one length, plumb however the bow is held", () => {
  const down = places.balance.map((value, axis) => places.weightEnd[axis]! - value)
  const up = places.balanced.map((value, axis) => places.liftEnd[axis]! - value)
  expect(down[1]).toBeCloseTo(-up[1]!, 12)
  expect([down[0], down[2], up[0], up[2]]).toEqual([0, 0, 0, 0])
})

test("the hand's shift is drawn along the bow, larger than it is", () => {
  const [x, y, z] = places.pressure!
  expect(Math.hypot(x, y, z)).toBeCloseTo(Math.abs(drawn.gripShift) * SHIFT_DRAWN, 12)
  const alongBow = multiply(evaluation.now.rotation, [0, Math.sign(drawn.gripShift), 0])
  expect(x * alongBow[0] + y * alongBow[1] + z * alongBow[2]).toBeCloseTo(Math.abs(drawn.gripShift) * SHIFT_DRAWN, 12)
})

test("what lies too far off is drawn at the edge and said to lie beyond; what has no force has no mark", () => {
  const far = drawnPlaces(evaluation.now, { ...drawn, balancedForward: -3.1, gripShift: 0.7 })
  expect(far.beyond).toBe(true)
  expect(far.balanced[0]).toBeGreaterThan(-1)
  expect(Math.hypot(...far.pressure!)).toBeCloseTo(GRIP_REACH * SHIFT_DRAWN, 12)
  expect(drawnPlaces(evaluation.now, { ...drawn, gripShift: Number.NaN }).pressure).toBeNull()
})
