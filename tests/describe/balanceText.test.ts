import { describe, expect, test } from "vitest"
import {
  BALANCED_NM,
  forwardVerdict,
  massVerdict,
  netLiftVerdict,
  netLiftWords,
  sideVerdict,
  spanText,
  upVerdict,
  withSpread,
} from "../../src/describe/balanceText"
import { defaultPreferences } from "../../src/state/preferences"

const metric = defaultPreferences
const imperial = { massUnit: "oz", lengthUnit: "in", forceUnit: "lbf" } as const
const plain = (text: string | null) => text?.replaceAll("\u00a0", " ") ?? null
const words = (verdict: { words: string }) => plain(verdict.words)

describe("a value against its target", () => {
  test("both ends of a target belong to it", () => {
    expect(forwardVerdict(37, [37, 53], metric).standing).toBe("inside")
    expect(forwardVerdict(53, [37, 53], metric).standing).toBe("inside")
    expect(words(forwardVerdict(41, [37, 53], metric))).toBe("inside the target")
  })

  test("a miss says by how much and in which direction", () => {
    expect(words(forwardVerdict(25, [37, 53], metric))).toBe("12.0 mm too far back")
    expect(words(forwardVerdict(60.5, [37, 53], metric))).toBe("7.5 mm too far forward")
    expect(words(upVerdict(-23, [-20, 5], metric))).toBe("3.0 mm too low")
    expect(words(upVerdict(7, [-20, 5], metric))).toBe("2.0 mm too high")
    expect(words(sideVerdict(-7, [-5, 5], metric))).toBe("2.0 mm too far left")
    expect(words(sideVerdict(8, [-5, 5], metric))).toBe("3.0 mm too far right")
    expect(words(netLiftVerdict(-0.7, [-0.2, 0.3], metric))).toBe("0.50 N·m too little lift")
    expect(words(netLiftVerdict(2.3, [-0.2, 0.3], metric))).toBe("2.00 N·m too much lift")
  })

  test("a miss smaller than the last shown digit is not called a miss of nothing", () => {
    expect(words(forwardVerdict(53.02, [37, 53], metric))).toBe("less than 0.1 mm too far forward")
    expect(words(massVerdict(2300.2, 2300, metric))).toBe("less than 1 g too heavy")
    expect(words(forwardVerdict(36.97, [37, 53], imperial))).toBe("less than 0.01 in too far back")
  })

  test("the target itself is said in the chosen unit without needless zeros", () => {
    expect(plain(forwardVerdict(3, [40, 80], metric).target)).toBe("target 40–80 mm")
    expect(plain(forwardVerdict(3, [25.4, 63.5], imperial).target)).toBe("target 1–2.5 in")
    expect(plain(spanText([-5, 7], "length", metric))).toBe("−5 to 7 mm")
    expect(plain(spanText([30, 30], "length", metric))).toBe("30 mm")
  })

  test("without a target nothing is judged", () => {
    expect(forwardVerdict(5, undefined, metric)).toEqual({
      standing: "untargeted",
      words: "no target set",
      target: null,
    })
    expect(massVerdict(5, undefined, metric)).toEqual({ standing: "untargeted", words: "no limit set", target: null })
  })

  test("a mass at its limit is within it, and one above is too heavy", () => {
    expect(massVerdict(2300, 2300, metric).standing).toBe("inside")
    expect(words(massVerdict(2353, 2300, metric))).toBe("53 g too heavy")
    expect(plain(massVerdict(2353, 2300, metric).target)).toBe("at most 2300 g")
  })
})

describe("the net at full draw in words", () => {
  test("a positive net raises the front and a negative one drops it", () => {
    expect(netLiftWords(0.7)).toBe("front rises")
    expect(netLiftWords(-0.7)).toBe("front drops")
  })

  test("what a hand cannot feel counts as balanced on either side of zero", () => {
    expect(netLiftWords(BALANCED_NM)).toBe("balanced")
    expect(netLiftWords(-BALANCED_NM)).toBe("balanced")
    expect(netLiftWords(BALANCED_NM * 1.01)).toBe("front rises")
  })
})

test("a verdict on what no reading of a measured bow determines is neither inside nor outside, and says why", () => {
  const inside = forwardVerdict(50, [40, 80], metric)
  expect(withSpread(inside, undefined)).toBe(inside)
  expect(withSpread(inside, 7)).toBe(inside)
  expect(withSpread(inside, Number.POSITIVE_INFINITY)).toEqual({
    ...inside,
    standing: "untargeted",
    words: "inside the target, if the riser is as assumed",
  })
})
