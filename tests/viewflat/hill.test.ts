import { describe, expect, it } from "vitest"
import { hillRise } from "../../src/picture/hill"
import { inMotion } from "../../src/scene/hills"
import { contentsOf } from "../../src/viewflat/contents"
import { createFraming } from "../../src/viewflat/framing"
import { hillPoints, hillUnder } from "../../src/viewflat/hill"
import { fullDocument } from "../scene/documents"
import { evaluationOf, sceneOf } from "../picture/pictures"

const on = (slopeDeg: number) => {
  const scene = sceneOf(fullDocument())
  return contentsOf(evaluationOf({ ...scene, pose: { ...scene.pose, slopeDeg } }))
}

describe("the hillside under the side drawing", () => {
  it("is not there on the level", () => {
    expect(on(0).hill).toBeNull()
    expect(hillUnder([[0, -0.3]], 0)).toBeNull()
  })
  it("lies below everything, whichever way it leans", () => {
    for (const slope of [-41, -17, 13, 43]) {
      const { hill, side } = on(slope)
      const bow = side.points.slice(0, -hillPoints(hill!).length)
      for (const [x, y] of bow) expect(y).toBeGreaterThan(hill!.ground + hillRise(x, slope))
    }
  })
  it("has its room in the drawing, target and all", () => {
    const { hill, side } = on(29)
    expect(side.extent.across[1]).toBeGreaterThanOrEqual(hill!.to)
    expect(side.extent.up[0]).toBeLessThanOrEqual(hill!.ground + hillRise(hill!.from, 29))
  })
})

describe("the flat drawing of a motion", () => {
  const scene = sceneOf(fullDocument())
  const held = evaluationOf({ ...scene, pose: { ...scene.pose, slopeDeg: 5 } })
  const at = (slopeDeg: number) => inMotion(held, slopeDeg, new Map())
  const room = [at(5), at(13), at(31)]
  const played = (slopeDeg: number) => ({ of: held, evaluation: at(slopeDeg), hillDeg: 31, room, locked: [] })
  const page = { width: 1040, height: 790, corner: { width: 262, height: 372 }, bottom: 124, edge: 30 }

  it("keeps its frames and its hillside while the bow turns", () => {
    const framing = createFraming()
    const arm = { width: 190, height: 80 }
    const frames = [7, 19, 31].map((slope) => {
      const now = played(slope)
      return framing.frames(now.evaluation, { ...page, arm }, false, { played: now, other: null })
    })
    expect(frames[1]).toBe(frames[0])
    expect(frames[2]).toBe(frames[0])
    const hills = [7, 19, 31].map((slope) => contentsOf(at(slope), played(slope)).hill)
    expect(hills[0]?.slopeDeg).toBe(31)
    expect(hills[1]).toEqual(hills[0])
    expect(hills[2]).toEqual(hills[0])
  })
})
