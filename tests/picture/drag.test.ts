import { describe, expect, it } from "vitest"
import type { Vec3 } from "../../src/core/solids"
import { type Draggable, startDrag } from "../../src/picture/drag"
import { fromAbove, fromBehind, fromTheRight, parallel, perspective } from "./pictures"

const DEGREE = Math.PI / 180

/** A length in mm along x from (0.04, -0.07, 0). */
const rod: Draggable = {
  place: (mm) => [0.04 + mm / 1000, -0.07, 0],
  value: 700,
  min: 1,
  max: 2000,
  step: 5,
}

/** An angle in degrees about y at 0.2 m, 0 straight back, positive to the right. */
const splay: Draggable = {
  place: (deg) => [-0.2 * Math.cos(deg * DEGREE), 0.03, 0.2 * Math.sin(deg * DEGREE)],
  value: 40,
  min: -180,
  max: 180,
  step: 1,
}

const cameras = {
  "from the right": fromTheRight,
  "from above": fromAbove,
  askew: parallel([-0.5, -0.3, -0.7]),
  "in perspective": perspective([1.1, 0.4, 1.7], [0.2, 0, 0]),
}

describe("dragging a handle", () => {
  for (const [name, project] of Object.entries(cameras)) {
    it(`puts a length where the pointer is, seen ${name}`, () => {
      const start = project(rod.place(700))
      const drag = startDrag(rod, project, start)
      for (const mm of [713, 890, 430, 57]) expect(drag(project(rod.place(mm)))).toBeCloseTo(mm, 1)
    })

    it(`puts an angle where the pointer is, seen ${name}`, () => {
      const start = project(splay.place(40))
      const drag = startDrag(splay, project, start)
      for (const deg of [43, 57, 71, 23]) expect(drag(project(splay.place(deg)))).toBeCloseTo(deg, 1)
    })

    it(`keeps the distance between pointer and handle, seen ${name}`, () => {
      const at = project(rod.place(700))
      const drag = startDrag(rod, project, { x: at.x + 7, y: at.y - 5 })
      expect(drag({ x: at.x + 7, y: at.y - 5 })).toBe(700)
      const there = project(rod.place(830))
      expect(drag({ x: there.x + 7, y: there.y - 5 })).toBeCloseTo(830, 1)
    })
  }

  it("takes the nearest point of the path for a pointer beside it", () => {
    const at = fromTheRight(rod.place(700))
    const drag = startDrag(rod, fromTheRight, at)
    // 400 px a metre: 40 px is 100 mm; the 90 px across the rod do not count.
    expect(drag({ x: at.x + 40, y: at.y + 90 })).toBeCloseTo(800, 3)
  })

  it("stops at the range's ends", () => {
    const at = fromTheRight(rod.place(700))
    const drag = startDrag(rod, fromTheRight, at)
    expect(drag({ x: at.x - 5000, y: at.y })).toBe(1)
    expect(drag({ x: at.x + 5000, y: at.y })).toBe(2000)
    expect(drag({ x: at.x + 4, y: at.y })).toBeCloseTo(710, 1)
  })

  it("stops at an arc's turning point when pulled past it, and comes back", () => {
    const at = fromTheRight(splay.place(40))
    const drag = startDrag(splay, fromTheRight, at)
    expect(Math.abs(drag({ x: at.x - 300, y: at.y }))).toBeLessThan(2)
    const back = drag(fromTheRight(splay.place(60)))
    expect(Math.abs(back)).toBeCloseTo(60, 0)
  })

  it("goes round an arc with a pointer that moves in a circle", () => {
    const drag = startDrag(splay, fromAbove, fromAbove(splay.place(40)))
    for (let deg = 40; deg <= 175; deg += 3) expect(drag(fromAbove(splay.place(deg)))).toBeCloseTo(deg, 1)
  })

  it("reads up as more where the path is seen end-on, at the pace of one seen square on", () => {
    const drag = startDrag(rod, fromBehind, { x: 500, y: 300 })
    expect(drag({ x: 500, y: 300 })).toBe(700)
    expect(drag({ x: 530, y: 280 })).toBeCloseTo(750, 6)
    expect(drag({ x: 470, y: 320 })).toBeCloseTo(650, 6)
  })

  it("does not race where a path is all but end-on", () => {
    const angle = 4 * DEGREE
    const drag = startDrag(rod, parallel([Math.cos(angle), 0, -Math.sin(angle)]), { x: 500, y: 300 })
    expect(drag({ x: 520, y: 300 })).toBe(700)
    expect(drag({ x: 520, y: 296 })).toBeCloseTo(710, 6)
  })

  it("gives every step of a stack as many px as asked for, along the stack's picture", () => {
    const stack: Draggable = { place: (n) => [0.8 + n * 0.007, -0.07, 0], value: 5, min: 0, max: 60, step: 1 }
    const at = fromTheRight(stack.place(5))
    const drag = startDrag(stack, fromTheRight, at, 13)
    expect(drag({ x: at.x + 26, y: at.y + 40 })).toBeCloseTo(7, 9)
    expect(drag({ x: at.x - 39, y: at.y })).toBeCloseTo(2, 9)
    expect(drag({ x: at.x - 390, y: at.y })).toBe(0)
  })

  it("follows a thick disc at its own size", () => {
    const stack: Draggable = { place: (n) => [0.8 + n * 0.05, -0.07, 0], value: 2, min: 0, max: 60, step: 1 }
    const at = fromTheRight(stack.place(2))
    expect(startDrag(stack, fromTheRight, at, 13)({ x: at.x + 60, y: at.y })).toBeCloseTo(5, 6)
  })

  it("moves nothing away when what it turns has no length to turn", () => {
    const still: Draggable = { place: (): Vec3 => [0.1, 0.2, 0.3], value: 10, min: -90, max: 90, step: 1 }
    const drag = startDrag(still, fromTheRight, { x: 500, y: 300 })
    expect(drag({ x: 600, y: 300 })).toBe(10)
    expect(drag({ x: 500, y: 290 })).toBeCloseTo(30, 9)
  })

  it("never puts a handle behind the camera", () => {
    const project = perspective([1.2, 0.1, 0.3], [0.2, 0, 0])
    const toward: Draggable = { ...rod, value: 500 }
    const at = project(toward.place(500))
    const drag = startDrag(toward, project, at)
    for (let px = 0; px < 3000; px += 90) {
      const value = drag({ x: at.x - px, y: at.y })
      expect(project(toward.place(value)).visible).toBe(true)
    }
  })
})
