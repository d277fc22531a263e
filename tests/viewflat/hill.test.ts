import { describe, expect, it } from "vitest"
import { hillRise } from "../../src/picture/hill"
import { contentsOf } from "../../src/viewflat/contents"
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
