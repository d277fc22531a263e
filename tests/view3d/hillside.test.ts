import { describe, expect, it } from "vitest"
import { multiply } from "../../src/core/solids"
import { poseRotation } from "../../src/core/balance"
import { hillRise, TERRACE } from "../../src/picture/hill"
import { emptyTerrain, layTerrain, STRIP } from "../../src/view3d/shapes/terrain"
import { groundLevel, hillEnd } from "../../src/view3d/reach"
import type { Vec3 } from "../../src/core/solids"

const triples = (numbers: Float32Array): Vec3[] =>
  Array.from({ length: numbers.length / 3 }, (_, index) => [...numbers.subarray(index * 3, index * 3 + 3)] as never)

describe("the strip of hillside", () => {
  it("lies on the slope with its top and hangs its cut face below it", () => {
    const terrain = emptyTerrain()
    layTerrain(terrain, 23, 0.9)
    const places = triples(terrain.places)
    triples(terrain.positions).forEach(([x, y, z], index) => {
      const deep = places[index]![2] * STRIP.deep
      expect(y).toBeCloseTo(hillRise(x, 23) - deep, 6)
      expect(Math.abs(z)).toBeCloseTo(STRIP.half, 6)
    })
  })
  it("measures its lines along the ground, not along the level", () => {
    const terrain = emptyTerrain()
    const [behind, ahead] = layTerrain(terrain, 53, 0.9)
    const slanted = (x: number) => TERRACE + (Math.abs(x) - TERRACE) / Math.cos((53 * Math.PI) / 180)
    const xs = triples(terrain.positions).map(([x]) => x)
    expect(ahead).toBeCloseTo(slanted(Math.max(...xs)), 6)
    expect(behind).toBeCloseTo(-slanted(Math.min(...xs)), 6)
  })
  it("names only corners it has, every one of them", () => {
    const { indices, positions } = emptyTerrain()
    expect(new Set(indices).size).toBe(positions.length / 3)
    expect(Math.max(...indices)).toBe(positions.length / 3 - 1)
  })
})

describe("the ground on a slope", () => {
  const bow: Vec3[] = [
    [0, -0.83, 0],
    [0, 0.87, 0],
    [0.97, -0.05, 0],
  ]
  it("stays clear of limbs and rods that lean toward the hill", () => {
    for (const slope of [-45, -20, 7, 33, 45]) {
      const held = bow.map((point) => multiply(poseRotation((slope * Math.PI) / 180, 0), point))
      const ground = groundLevel(held, slope)
      for (const [x, y] of held) expect(y).toBeGreaterThan(ground + hillRise(x, slope))
    }
  })
  it("ends at the target's foot down the hill and above its top up the hill", () => {
    expect(hillEnd(0.9, -1, 0)).toEqual([0.9, -1, 0])
    expect(hillEnd(0.9, -1, -20)[1]).toBeCloseTo(-1 + hillRise(0.9, -20), 12)
    expect(hillEnd(0.9, -1, 20)[1]).toBeGreaterThan(-1 + hillRise(0.9, 20))
  })
})
