import { describe, expect, it } from "vitest"
import { RADIAN_PER_DEGREE as DEGREE } from "../../src/core/constants"
import { inMotion } from "../../src/scene/hills"
import { createBench } from "../../src/state/bench"
import { createPicture } from "../../src/view3d/createPicture"
import type { Labels } from "../../src/view3d/labels"
import type { Looks } from "../../src/view3d/looks"
import { sceneOf } from "../picture/pictures"
import { extender, rigged, swing } from "../scene/documents"

/** Nothing of what is drawn is asked for here. */
const unused = <T>() => new Proxy({}, {}) as T

function playing() {
  const bench = createBench(sceneOf(rigged({ back: [extender(), swing()] })))
  const picture = createPicture(bench, unused<Looks>(), unused<Labels>(), () => false)
  const of = bench.store.getState().evaluation
  const at = (slopeDeg: number) => inMotion(of, slopeDeg, new Map())
  const room = [at(0), at(15), at(30)]
  const play = (slopeDeg: number) =>
    bench.setView({ played: { of, evaluation: at(slopeDeg), hillDeg: 30, room, locked: [] } })
  return { bench, picture, of, play }
}

describe("the picture of a motion", () => {
  it("shows the bow where the motion has it, over ground and room that stand still", () => {
    const { picture, play } = playing()
    play(0)
    const first = picture.frame()
    expect(first.hillDeg).toBe(30)
    play(22)
    const later = picture.frame()
    expect(later.evaluation.now.pose.slopeDeg).toBe(22)
    expect(later.evaluation.now.rotation[1][0]).toBeCloseTo(Math.sin(22 * DEGREE), 12)
    expect([later.ground, later.hillDeg, later.line, later.reach]).toEqual([
      first.ground,
      first.hillDeg,
      first.line,
      first.reach,
    ])
    expect(later.parts.get("back/swing")).toBe(later.evaluation.now.parts.find(({ path }) => path === "back/swing"))
  })

  it("draws one new frame for each moment, and the bow as held when it is over", () => {
    const { bench, picture, of, play } = playing()
    const level = picture.frame()
    let frames = 0
    picture.attach(() => frames++)
    play(3)
    play(7)
    expect(frames).toBe(2)
    bench.setView({ played: null })
    expect(frames).toBe(3)
    const after = picture.frame()
    expect(after.evaluation).toBe(of)
    expect(after.played).toBeNull()
    expect([after.ground, after.hillDeg, after.reach]).toEqual([level.ground, level.hillDeg, level.reach])
  })
})
