import { describe, expect, test } from "vitest"
import { drawnBalance, gravityInBow, gravityMoments, poseRotation } from "../../../src/core/balance"
import { GRAVITY, NEWTON_PER_LBF } from "../../../src/core/constants"
import { cross, multiply, scale, transpose, type Vec3 } from "../../../src/core/solids"
import { expectNear } from "../near"

const degrees = (angle: number) => (angle * Math.PI) / 180

describe("how the bow is held", () => {
  test("level it is the world", () => {
    expect(poseRotation(0, 0)).toEqual([
      [1, -0, 0],
      [0, 1, -0],
      [0, 0, 1],
    ])
  })

  test("a positive slope raises the front, a positive cant leans the top to the right", () => {
    expectNear(multiply(poseRotation(degrees(30), 0), [1, 0, 0]), [Math.sqrt(3) / 2, 0.5, 0])
    expectNear(multiply(poseRotation(0, degrees(30)), [0, 1, 0]), [0, Math.sqrt(3) / 2, 0.5])
  })

  test("it is first canted about its own length, then raised: the arrow line's rise is the slope, whatever the cant", () => {
    for (const cant of [-50, 0, 20]) {
      const [, rise] = multiply(poseRotation(degrees(25), degrees(cant)), [1, 0, 0])
      expectNear([rise], [Math.sin(degrees(25))])
    }
  })

  test("gravity in the bow's frame is the world's down, turned back", () => {
    const rotation = poseRotation(0.4, -0.3)
    expectNear(gravityInBow(rotation), multiply(transpose(rotation), [0, -1, 0]))
    expectNear(multiply(rotation, gravityInBow(rotation)), [0, -1, 0])
  })

  test("with the front raised, down lies toward the archer in the bow's own frame; canted right, to the right", () => {
    expect(gravityInBow(poseRotation(0.4, 0))[0]).toBeLessThan(0)
    // The bow's foot goes left, so what hangs plumb stays to the right of it.
    expect(gravityInBow(poseRotation(0, 0.4))[2]).toBeCloseTo(Math.sin(0.4), 12)
  })

  test("a level bow's down has no negative zeros", () => {
    expect(gravityInBow(poseRotation(0, 0)).map((each) => Object.is(each, -0))).toEqual([false, false, false])
  })
})

describe("what gravity does about the grip", () => {
  test("level: weight times the forward and the side distance", () => {
    const { armForward, armSide, noseDown, cantRight } = gravityMoments(3, [0.05, -0.7, 0.02], poseRotation(0, 0))
    expectNear([armForward, armSide], [0.05, 0.02])
    expectNear([noseDown, cantRight], [3 * GRAVITY * 0.05, 3 * GRAVITY * 0.02])
  })

  test("is the torque r × F of the world, with its signs named", () => {
    const rotation = poseRotation(0.4, -0.3)
    const centre: Vec3 = [0.05, -0.07, 0.02]
    const torque = cross(multiply(rotation, centre), scale([0, -1, 0], 3 * GRAVITY))
    const { noseDown, cantRight } = gravityMoments(3, centre, rotation)
    // A front that sinks turns against z, a top that goes right turns along x.
    expectNear([noseDown, cantRight], [-torque[2], torque[0]])
  })

  test("a balance point below the grip: raising the front brings it forward, lowering takes it back", () => {
    const low: Vec3 = [0.03, -0.05, 0]
    const arm = (slope: number) => gravityMoments(2, low, poseRotation(degrees(slope), 0)).armForward
    expectNear([arm(20)], [0.03 * Math.cos(degrees(20)) + 0.05 * Math.sin(degrees(20))])
    expect(arm(-20)).toBeLessThan(arm(0))
    expect(arm(20)).toBeGreaterThan(arm(0))
  })
})

describe("the balance at full draw", () => {
  const hold = { holdForce: 170, nockHeight: 0.05, drawLength: 0.67, elbowElevation: 0, mass: 3, noseDown: 2 }

  test("with the elbow in line, the pull lifts by force times nock height", () => {
    expectNear([drawnBalance(hold).lift], [170 * 0.05])
  })

  test("a raised elbow tilts the line of pull below the grip's side of it and takes lift away", () => {
    const elbow = degrees(2)
    const { lift } = drawnBalance({ ...hold, elbowElevation: elbow })
    expectNear([lift], [170 * (0.05 * Math.cos(elbow) - 0.67 * Math.sin(elbow))])
    expect(lift).toBeLessThan(170 * 0.05)
  })

  test("the lift is the torque of the pull at the nock, straight back and tilted up by the elbow", () => {
    const elbow = degrees(5)
    const pull: Vec3 = [-170 * Math.cos(elbow), 170 * Math.sin(elbow), 0]
    expectNear([drawnBalance({ ...hold, elbowElevation: elbow }).lift], [cross([-0.67, 0.05, 0], pull)[2]])
  })

  test("net is lift less the weight's moment; the grip shift holds it; at the balanced place the net is nothing", () => {
    const { lift, netLift, gripShift, balancedForward } = drawnBalance(hold)
    expectNear([netLift], [lift - 2])
    expectNear([gripShift * 170], [netLift])
    const { noseDown } = gravityMoments(3, [balancedForward, 0, 0], poseRotation(0, 0))
    expect(drawnBalance({ ...hold, noseDown }).netLift).toBeCloseTo(0, 12)
  })

  test("without a holding force there is no pressure to shift", () => {
    expect(drawnBalance({ ...hold, holdForce: 0, noseDown: 0 }).gripShift).toBeNaN()
  })
})

test("a pound-force is the exact pound at standard gravity", () => {
  expectNear([NEWTON_PER_LBF], [0.45359237 * GRAVITY])
})
