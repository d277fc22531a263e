import { expect, test } from "vitest"
import { gravityInBow, poseRotation } from "../../../src/core/balance"
import { RADIAN_PER_DEGREE as DEGREE } from "../../../src/core/constants"
import { dot, type Vec3 } from "../../../src/core/solids"
import { restAngle, weightMoment } from "../../../src/core/swing/motion"
import { inMotion, swingMotions } from "../../../src/scene/hills"
import type { Pose } from "../../../src/scene/schema"
import { evaluationOf, sceneOf } from "../../picture/pictures"
import { extender, rigged, swing } from "../documents"

const held = (pose: Pose) =>
  evaluationOf(
    sceneOf(
      rigged(
        {
          lower: [swing({ joint: "ball", stopDeg: 71 })],
          back: [extender({ lengthMm: 41 }), swing({ joint: "hinge", stopDeg: 67 })],
        },
        { pose },
      ),
    ),
  )

const poses: Pose[] = [
  { draw: 0, slopeDeg: 0, cantDeg: 0 },
  { draw: 0.3, slopeDeg: 23, cantDeg: 0 },
  { draw: 1, slopeDeg: -31, cantDeg: 11 },
]

test("with every weight where it rests, a bow in motion is the bow as it is held", () => {
  for (const pose of poses) {
    const { slopeDeg, cantDeg } = pose
    const there = held(pose)
    const motions = swingMotions(there.scene)
    const rest = new Map<string, Vec3>(
      motions.map(({ path, model, stem }) => [path, stem(restAngle(model!, slopeDeg * DEGREE))]),
    )
    for (const part of there.now.parts) {
      if (part.hung === undefined) continue
      part.hung.rest.direction.forEach((value, axis) => {
        expect(rest.get(part.path)![axis]).toBeCloseTo(value, 12)
      })
    }
    const level = held({ ...pose, slopeDeg: 0 })
    const raised = inMotion(level, slopeDeg, rest)
    expect(raised.now.noseDown).toBeCloseTo(there.now.noseDown, 12)
    expect(raised.now.pose).toEqual(there.now.pose)
    raised.now.centre.forEach((value, axis) => {
      expect(value).toBeCloseTo(there.now.centre[axis]!, 12)
    })
    expect(raised.principal.moments[0]).toBeCloseTo(there.principal.moments[0], 12)
    expect(cantDeg).toBe(raised.now.pose.cantDeg)
  }
})

test("a weight off its rest changes the nose-down moment by what the motion's own formula says", () => {
  const there = held({ draw: 0, slopeDeg: 17, cantDeg: 7 })
  for (const { path, model, stem } of swingMotions(there.scene)) {
    const slope = 17 * DEGREE
    const rest = restAngle(model!, slope)
    const swung = inMotion(there, 17, new Map([[path, stem(rest + 0.31)]]))
    const expected = weightMoment(model!, rest + 0.31, slope) - weightMoment(model!, rest, slope)
    expect(swung.now.noseDown - there.now.noseDown).toBeCloseTo(expected, 12)
  }
})

test("a stem is a unit direction, and a hanging ball's lies along gravity", () => {
  const cantDeg = 13
  const ball = swingMotions(held({ draw: 0, slopeDeg: 0, cantDeg }).scene).find(({ path }) => path === "lower/swing")!
  for (const angle of [-1.1, 0.3]) expect(dot(ball.stem(angle), ball.stem(angle))).toBeCloseTo(1, 12)
  const gravity = gravityInBow(poseRotation(-19 * DEGREE, cantDeg * DEGREE))
  ball.stem(19 * DEGREE).forEach((value, axis) => {
    expect(value).toBeCloseTo(gravity[axis]!, 12)
  })
})
