import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { spreadApart } from "../../src/picture/apart"

const settle = (points: readonly { x: number; y: number }[], spacing: number) =>
  spreadApart(points, spacing).map(({ x, y }, index) => ({ x: points[index]!.x + x, y: points[index]!.y + y }))

describe("moving knobs apart", () => {
  it("leaves knobs alone that have room", () => {
    expect(
      spreadApart(
        [
          { x: 10, y: 20 },
          { x: 45, y: 20 },
        ],
        30,
      ),
    ).toEqual([
      { x: 0, y: 0 },
      { x: 0, y: 0 },
    ])
  })

  it("keeps the first of two at its place and moves the second no further than it must", () => {
    const [first, second] = spreadApart(
      [
        { x: 10, y: 20 },
        { x: 10, y: 20 },
      ],
      30,
    )
    expect(first).toEqual({ x: 0, y: 0 })
    expect(Math.hypot(second!.x, second!.y)).toBeCloseTo(30, 9)
  })

  it("leaves no two of up to twenty knobs nearer than the spacing, however they crowd", () => {
    const point = fc.record({ x: fc.integer({ min: 0, max: 60 }), y: fc.integer({ min: 0, max: 60 }) })
    fc.assert(
      fc.property(fc.array(point, { maxLength: 20 }), (points) => {
        const settled = settle(points, 26)
        settled.forEach((a, i) => {
          settled.slice(i + 1).forEach((b) => {
            expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(25.99)
          })
        })
      }),
      { seed: 7, numRuns: 300 },
    )
  })

  it("gives the same answer for the same points", () => {
    const points = Array.from({ length: 23 }, (_, i) => ({ x: (i * 37) % 50, y: (i * 53) % 70 }))
    expect(spreadApart(points, 26)).toEqual(spreadApart(points, 26))
  })
})
