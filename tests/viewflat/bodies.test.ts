import { describe, expect, it } from "vitest"
import { dot, norm, subtract, unit } from "../../src/core/solids"
import { corners, cylinder, ring } from "../../src/viewflat/bodies"

describe("the points of a body", () => {
  it("of a ring are square to its axis and at its radius, whichever way it points", () => {
    for (const d of [unit([3, -2, 5]), unit([0, 0, 1]), unit([0, 1, 0]), unit([-7, 2, 0])]) {
      for (const point of ring([2, 3, 5], d, 0.7)) {
        const spoke = subtract(point, [2, 3, 5])
        expect(norm(spoke)).toBeCloseTo(0.7, 12)
        expect(dot(spoke, d)).toBeCloseTo(0, 12)
      }
    }
  })

  it("of a cylinder reach from its start to its length along its axis", () => {
    const along = cylinder([2, 3, 5], [1, 0, 0], 0.7, 0.03).map(([x]) => x)
    expect(Math.min(...along)).toBeCloseTo(2, 12)
    expect(Math.max(...along)).toBeCloseTo(2.7, 12)
  })

  it("of a box are its eight corners", () => {
    const points = corners([2, 3, 5], [0.2, 0.6, 1])
    expect(new Set(points.map(String)).size).toBe(8)
    for (const [x, y, z] of points) {
      expect(Math.abs(x - 2)).toBeCloseTo(0.1, 12)
      expect(Math.abs(y - 3)).toBeCloseTo(0.3, 12)
      expect(Math.abs(z - 5)).toBeCloseTo(0.5, 12)
    }
  })
})
