import { describe, expect, it } from "vitest"
import { drawnBalance } from "../../src/core/balance"
import { cross, distance, subtract, unit } from "../../src/core/solids"
import { nockAt, onString, pullLine } from "../../src/picture/pull"
import { nockPoint } from "../../src/scene/assemble"
import type { Scene } from "../../src/scene/schema"
import { recurveBow, smallestDocument } from "../scene/documents"
import { evaluationOf, sceneOf } from "./pictures"

const drawn = (draw: number, elbowElevationDeg = 7): Scene =>
  sceneOf({ ...smallestDocument(), bow: recurveBow(), archer: { elbowElevationDeg }, pose: { draw } })

describe("the line of pull", () => {
  it("is drawn along the force of the fingers: its moment about the grip is the lift", () => {
    const scene = drawn(1)
    const { fullDraw, now } = evaluationOf(scene)
    const [nock, end] = pullLine(scene, now.limbs)!
    const pull = unit(subtract(end, nock))
    const arm = cross(nock, pull)[2]
    const { lift } = drawnBalance({
      holdForce: 1,
      nockHeight: nock[1],
      drawLength: -nock[0],
      elbowElevation: (7 * Math.PI) / 180,
      mass: 2,
      noseDown: 3,
    })
    expect(arm).toBeCloseTo(lift, 12)
    expect(arm * now.limbs.holdForce).toBeCloseTo(fullDraw.lift, 9)
  })

  it("is none at brace, where nobody pulls", () => {
    const scene = drawn(0)
    expect(pullLine(scene, evaluationOf(scene).now.limbs)).toBeNull()
  })
})

describe("the nock", () => {
  it("is where the string is solved to be", () => {
    for (const draw of [0, 0.35, 1]) {
      const scene = drawn(draw)
      const { limbs } = evaluationOf(scene).now
      expect(distance(nockAt(scene, draw), nockPoint(scene.bow, limbs))).toBeLessThan(1e-12)
    }
  })

  it("has its height's handle on the string, a little way up from it", () => {
    const scene = drawn(0.8)
    const { limbs } = evaluationOf(scene).now
    const [nock, end] = [nockPoint(scene.bow, limbs), limbs.stringEnds[0]]
    const place = onString(limbs, scene.bow.nockHeightMm)
    expect(distance(nock, place) + distance(place, end)).toBeCloseTo(distance(nock, end), 12)
    expect(distance(nock, place)).toBeGreaterThan(0.05)
  })
})
