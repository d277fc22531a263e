import { describe, expect, test } from "vitest"
import { compoundForce, compoundHoldForce } from "../../src/scene/compoundDraw"
import { readScene } from "../../src/scene/parse"
import type { CompoundBow } from "../../src/scene/schema"
import { expectNear } from "../core/near"
import { smallestDocument } from "./documents"

const read = readScene(smallestDocument())
if (!read.ok || read.value.bow.kind !== "compound") throw new Error("the smallest scene is a compound")
const bow: CompoundBow = read.value.bow
const PEAK = 47 * 4.4482216152605

describe("a compound's draw force", () => {
  test("is nothing at brace, and its peak less the let-off at full draw", () => {
    expect(compoundForce(bow, 0)).toBe(0)
    expectNear([compoundForce(bow, 1), compoundHoldForce(bow)], [PEAK * 0.35, PEAK * 0.35])
  })

  test("reaches its peak and never exceeds it", () => {
    const forces = Array.from({ length: 201 }, (_, step) => compoundForce(bow, step / 200))
    expectNear([Math.max(...forces)], [PEAK])
    expect(Math.min(...forces)).toBe(0)
  })

  test("rises, stays and falls without a jump", () => {
    const step = 1e-4
    let previous = 0
    let turned = 0
    let rising = true
    for (let t = step; t <= 1 + step / 2; t += step) {
      const force = compoundForce(bow, t)
      expect(Math.abs(force - previous)).toBeLessThan(PEAK * 6 * step)
      if (rising && force < previous) {
        rising = false
        turned++
      } else if (!rising) expect(force).toBeLessThanOrEqual(previous)
      previous = force
    }
    expect(turned).toBe(1)
  })

  test("without let-off stays at its peak", () => {
    expectNear(
      [compoundForce({ ...bow, letOffPercent: 0 }, 1), compoundForce({ ...bow, letOffPercent: 0 }, 0.85)],
      [PEAK, PEAK],
    )
  })
})
