import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { convexOutline, pathThrough } from "../../src/viewflat/outline"

const coordinate = fc.integer({ min: -50, max: 50 })
const point = fc.record({ x: coordinate, y: coordinate })
const turn = (a: { x: number; y: number }, b: { x: number; y: number }, c: { x: number; y: number }) =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)

describe("the convex outline", () => {
  it("of a square with points inside and on its edges is its corners", () => {
    const corners = [
      { x: 2, y: 3 },
      { x: 7, y: 3 },
      { x: 7, y: 8 },
      { x: 2, y: 8 },
    ]
    const outline = convexOutline([{ x: 4, y: 5 }, { x: 7, y: 5 }, corners[2]!, corners[0]!, corners[3]!, corners[1]!])
    expect(outline).toHaveLength(4)
    expect(outline).toEqual(expect.arrayContaining(corners))
  })

  it("turns left all the way and has every point on its left", () => {
    fc.assert(
      fc.property(fc.array(point, { minLength: 3, maxLength: 40 }), (points) => {
        const outline = convexOutline(points)
        if (outline.length < 3) return
        outline.forEach((a, index) => {
          const b = outline[(index + 1) % outline.length]!
          const c = outline[(index + 2) % outline.length]!
          expect(turn(a, b, c)).toBeGreaterThan(0)
          for (const p of points) expect(turn(a, b, p)).toBeGreaterThanOrEqual(0)
        })
      }),
      { seed: 11, numRuns: 300 },
    )
  })
})

describe("a path", () => {
  it("goes through its points to a tenth of a pixel, closed or open, and is empty without any", () => {
    const points = [
      { x: 1.26, y: 2 },
      { x: 3, y: 5.04 },
    ]
    expect(pathThrough(points, true)).toBe("M1.3 2.0L3.0 5.0Z")
    expect(pathThrough(points, false)).toBe("M1.3 2.0L3.0 5.0")
    expect(pathThrough([], true)).toBe("")
  })
})
