import { describe, expect, it } from "vitest"
import { hillRise, hillSpan, STEEPEST_DRAWN_DEG, TERRACE } from "../../src/picture/hill"

const tangent = (degrees: number) => Math.tan((degrees * Math.PI) / 180)

describe("the hillside", () => {
  it("is level where the archer stands", () => {
    for (const forward of [-TERRACE, -0.13, 0, 0.29, TERRACE]) expect(hillRise(forward, 37)).toBe(0)
  })
  it("rises by the slope toward the target and falls by it behind the archer", () => {
    expect(hillRise(TERRACE + 0.7, 23)).toBeCloseTo(0.7 * tangent(23), 12)
    expect(hillRise(-TERRACE - 0.5, 23)).toBeCloseTo(-0.5 * tangent(23), 12)
    expect(hillRise(TERRACE + 0.7, -31)).toBeCloseTo(-0.7 * tangent(31), 12)
  })
  it("is drawn no steeper than its steepest, however far the bow is raised", () => {
    expect(hillRise(TERRACE + 1, 90)).toBeCloseTo(tangent(STEEPEST_DRAWN_DEG), 9)
    expect(hillRise(TERRACE + 1, -73)).toBeCloseTo(-tangent(STEEPEST_DRAWN_DEG), 9)
  })
  it("reaches beyond the target, and always past the level place behind the archer", () => {
    expect(hillSpan(1.1).to).toBeGreaterThan(1.1)
    expect(hillSpan(0.2).from).toBeLessThan(-TERRACE)
  })
})
