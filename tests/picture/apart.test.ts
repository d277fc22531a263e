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

  it("takes a wanted place where there is a free one, further off or not, and any other where there is none", () => {
    const points = [
      { x: 31, y: 20 },
      { x: 17, y: 20 },
      { x: 5, y: 20 },
    ]
    const right = ({ x }: { x: number }) => x >= 13
    const shifts = spreadApart(points, 26, right)
    shifts.forEach(({ x, y }, index) => {
      expect(points[index]!.x + x).toBeGreaterThanOrEqual(13)
      expect(Math.hypot(x, y)).toBeLessThan(60)
    })
    const none = () => false
    expect(spreadApart(points, 26, none)).toEqual(spreadApart(points, 26))
    const far = ({ x }: { x: number }, of: { x: number }) => of.x !== 5 || x >= 13
    expect(spreadApart(points, 26, far).slice(0, 2)).toEqual(spreadApart(points, 26).slice(0, 2))
  })

  it("gives the same answer for the same points", () => {
    const points = Array.from({ length: 23 }, (_, i) => ({ x: (i * 37) % 50, y: (i * 53) % 70 }))
    expect(spreadApart(points, 26)).toEqual(spreadApart(points, 26))
  })
})
