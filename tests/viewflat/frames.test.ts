import { describe, expect, it } from "vitest"
import { multiply } from "../../src/core/solids"
import { handlesOf } from "../../src/picture/handles"
import { nockAt } from "../../src/picture/pull"
import type { Pane } from "../../src/picture/handle"
import { contentsOf } from "../../src/viewflat/contents"
import { arrangeFrames, boxOf, fits, flatten, onPage, type Page } from "../../src/viewflat/frames"
import { createFraming } from "../../src/viewflat/framing"
import { overlap } from "../../src/viewflat/labels"
import { createFlatProjector } from "../../src/viewflat/projector"
import { fullDocument, rigged, rod, smallestDocument } from "../scene/documents"
import { evaluationOf, sceneOf, turnedDocument } from "../picture/pictures"

const arm = { width: 190, height: 80 }
const pages: Readonly<Record<string, Page>> = {
  "a desk's": { width: 1040, height: 790, corner: { width: 262, height: 372 }, bottom: 124, edge: 30, arm },
  "a small desk's": { width: 684, height: 655, corner: { width: 262, height: 372 }, bottom: 124, edge: 30, arm },
  "a phone's": {
    width: 390,
    height: 388,
    corner: { width: 0, height: 0 },
    bottom: 64,
    edge: 12,
    arm: { width: 120, height: 44 },
  },
  "a tall one's": { width: 420, height: 1400, corner: { width: 0, height: 0 }, bottom: 64, edge: 12, arm },
}
const scenes = {
  "full rig, raised": sceneOf(fullDocument()),
  "turned rig": sceneOf(turnedDocument()),
  "bare bow": sceneOf(smallestDocument()),
}

describe("the frames of the flat drawings", () => {
  for (const [page, space] of Object.entries(pages)) {
    for (const [name, scene] of Object.entries(scenes)) {
      it(`show both drawings whole and apart on ${page} page (${name})`, () => {
        const { side, top } = contentsOf(evaluationOf(scene))
        const frames = arrangeFrames(space, side, top)
        expect(frames.side.scale).toBe(frames.top.scale)
        expect(frames.side.scale).toBeGreaterThan(60)
        expect(fits(frames, space, side, top, space.edge)).toBe(true)
        const above = boxOf(frames.top, top.extent, 0)
        const corner = {
          left: space.width - space.corner.width,
          right: space.width,
          top: 0,
          bottom: space.corner.height,
        }
        for (const point of side.points) {
          const { x, y } = onPage(frames.side, point)
          const dot = { left: x, right: x, top: y, bottom: y }
          expect(x > 0 && x < space.width && y > 0 && y < space.height).toBe(true)
          expect(overlap(dot, above) || overlap(dot, corner)).toBe(false)
        }
      })
    }
  }

  it("have room at brace for the nock at full draw, so that the string can be drawn while they stay", () => {
    for (const space of Object.values(pages)) {
      const scene = scenes["bare bow"]
      const { side, top } = contentsOf(evaluationOf(scene))
      const { x } = onPage(arrangeFrames(space, side, top).side, flatten.side(nockAt(scene, 1)))
      expect(x).toBeGreaterThan(space.edge / 2)
    }
  })

  it("are drawn, cut off, even where there is no room at all", () => {
    const { side, top } = contentsOf(evaluationOf(scenes["bare bow"]))
    const frames = arrangeFrames({ ...pages["a phone's"]!, width: 3, height: 2 }, side, top)
    expect(frames.side.scale).toBeGreaterThan(0)
  })

  it("put the target to the right, up up, and the archer's right below from above", () => {
    expect(flatten.side([2, 3, 5])).toEqual([2, 3])
    expect(flatten.top([2, 3, 5])).toEqual([2, -5])
    expect(onPage({ x: 100, y: 200, scale: 10 }, [2, 3])).toEqual({ x: 120, y: 170 })
  })
})

describe("framing", () => {
  const page = pages["a desk's"]!
  const withRod = (lengthMm: number) => evaluationOf(sceneOf(rigged({ front: [rod({ lengthMm })] })))

  it("stays as it is for a change that still fits", () => {
    const framing = createFraming()
    const first = framing.frames(withRod(710), page, false)
    expect(framing.frames(withRod(690), page, false)).toBe(first)
  })

  it("gives way when the drawing outgrows the page, and comes back when it is much too small", () => {
    const framing = createFraming()
    const first = framing.frames(withRod(710), page, false)
    const grown = framing.frames(withRod(1900), page, false)
    expect(grown.side.scale).toBeLessThan(first.side.scale)
    expect(framing.frames(withRod(710), page, false).side.scale).toBeGreaterThan(grown.side.scale)
  })

  it("never moves under a handle that is being dragged", () => {
    const framing = createFraming()
    const first = framing.frames(withRod(710), page, false)
    expect(framing.frames(withRod(1900), page, true)).toBe(first)
  })

  it("begins anew on a page of another size", () => {
    const framing = createFraming()
    framing.frames(withRod(710), page, false)
    const small = framing.frames(withRod(710), pages["a phone's"]!, true)
    expect(small.side.scale).toBeLessThan(300)
  })
})

describe("the flat projector", () => {
  const frames = { side: { x: 100, y: 200, scale: 400 }, top: { x: 500, y: 600, scale: 300 } }

  it("projects into each drawing by its own frame, and into the side drawing by itself", () => {
    const projector = createFlatProjector(frames)
    const at = (pane: Pane) => projector.pane(pane).project([0.2, 0.3, 0.5])
    expect(at("side")).toMatchObject({ x: 180, y: 80, visible: true })
    expect(at("top")).toMatchObject({ x: 560, y: 750, visible: true })
    expect(projector.project([0.2, 0.3, 0.5])).toEqual(at("side"))
  })

  it("counts as nearer what is further right from the side, and what is higher from above", () => {
    const projector = createFlatProjector(frames)
    const depth = (pane: Pane, point: readonly [number, number, number]) => projector.pane(pane).project(point).depth
    expect(depth("side", [0, 0, 0.2])).toBeLessThan(depth("side", [0, 0, -0.3]))
    expect(depth("top", [0, 0.2, 0])).toBeLessThan(depth("top", [0, -0.3, 0]))
  })

  it("tells its listeners of other frames only, until they leave", () => {
    const projector = createFlatProjector(frames)
    let told = 0
    const leave = projector.subscribe(() => told++)
    projector.pane("top").subscribe(() => told++)
    projector.use(frames)
    expect(told).toBe(0)
    projector.use({ ...frames, side: { x: 7, y: 5, scale: 400 } })
    expect(told).toBe(2)
    expect(projector.project([0, 0, 0])).toMatchObject({ x: 7, y: 5 })
    leave()
    projector.use(frames)
    expect(told).toBe(3)
  })

  it("shows every handle's movement in the drawing the handle asks for", () => {
    const scene = scenes["full rig, raised"]
    const evaluation = evaluationOf(scene)
    const projector = createFlatProjector(frames)
    for (const handle of handlesOf(scene, evaluation)) {
      const { project } = projector.pane(handle.seen)
      const at = (value: number) => project(multiply(evaluation.now.rotation, handle.place(value)))
      const from = at(handle.value)
      const to = at(handle.value + handle.field.coarse)
      expect(Math.hypot(to.x - from.x, to.y - from.y), handle.key).toBeGreaterThan(1)
    }
  })
})
