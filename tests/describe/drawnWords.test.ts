import { expect, test } from "vitest"
import { drawnWords, sketchedForce } from "../../src/describe/drawnWords"

const units = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const
const drawn = { lift: 2.45, netLift: 0.69, balancedForward: 0.0891, gripShift: 0.0037 }

test("the drawn balance is said in the chosen units", () => {
  expect(drawnWords(drawn, 0.064, false, units)).toEqual({
    lift: "lift 2.45\u00a0N·m",
    weight: "weight 1.76\u00a0N·m",
    net: "net +0.69\u00a0N·m, front rises",
    gap: "net +0.69\u00a0N·m, front rises: 25.1\u00a0mm short of balanced",
    hand: "hand 3.7\u00a0mm higher, drawn 4×",
  })
  const inches = drawnWords(drawn, 0.064, false, { massUnit: "oz", lengthUnit: "in", forceUnit: "lbf" })
  expect(inches.gap).toMatch(/: 0\.99\u00a0in short of balanced$/)
  expect(inches.net).toBe("net +6.11\u00a0lbf·in, front rises")
})

test("a front that drops has its balance point past the balanced place and the hand lower", () => {
  const words = drawnWords({ ...drawn, netLift: -0.27, gripShift: -0.0014 }, 0.1, false, units)
  expect(words.net).toBe("net \u22120.27\u00a0N·m, front drops")
  expect(words.gap).toMatch(/front drops: 10\.9\u00a0mm past balanced$/)
  expect(words.hand).toBe("hand 1.4\u00a0mm lower, drawn 4×")
})

test("a shift further than a hand can go on a grip is said to be that", () => {
  expect(drawnWords({ ...drawn, gripShift: 0.047 }, 0.064, false, units).hand).toBe(
    "hand 47.0\u00a0mm higher, more than a grip allows",
  )
})

test("without a holding force the hand is not spoken of", () => {
  expect(drawnWords({ ...drawn, gripShift: Number.NaN }, 0.064, false, units).hand).toBe("")
})

test("a compound between brace and full draw has its force sketched, and says about", () => {
  expect(sketchedForce("compound", 0.4)).toBe(true)
  expect(sketchedForce("compound", 1)).toBe(false)
  expect(sketchedForce("recurve", 0.4)).toBe(false)
  expect(drawnWords(drawn, 0.064, true, units).net).toBe("net about +0.69\u00a0N·m, front rises")
})
