import { expect, test } from "vitest"
import {
  bandProblem,
  countText,
  coverText,
  earlierText,
  lostText,
  missText,
  outcomeText,
  refusalText,
  rigText,
  sleptText,
  wrongFieldsText,
} from "../../src/describe/findText"
import type { FoundSetup } from "../../src/scene/find"
import { defaultPreferences as units } from "../../src/state/preferences"

test("counts have separators, and very large ones powers of ten", () => {
  expect([countText(1234567), countText(2.3e16)]).toEqual(["1,234,567", "2.3 × 10^16"])
})

test("how much is covered: under way, proved, or stopped", () => {
  const half = { combinations: 4000, covered: 1700, setups: [] }
  expect(coverText(half, null)).toBe("42.5\u00a0% of 4,000 combinations covered.")
  expect(coverText(half, "stopped")).toBe(
    "Stopped with 42.5\u00a0% of 4,000 combinations covered: the best so far, not proved.",
  )
  expect(coverText({ ...half, covered: 4000 }, "proved")).toBe(
    "All 4,000 combinations are covered: this list is proved.",
  )
})

test("an outcome says what broke, what was found and whether that is proved", () => {
  const base = {
    kind: "searched" as const,
    combinations: 50,
    covered: 50,
    proved: true,
    trouble: null,
    misses: [],
    lost: [],
  }
  const one = [{ order: 3 } as FoundSetup]
  expect(outcomeText({ ...base, setups: one })).toBe("All 50 combinations are covered: this list is proved.")
  expect(outcomeText({ ...base, setups: [] })).toBe(
    "No setup from this kit meets every limit; all 50 combinations are covered.",
  )
  expect(outcomeText({ ...base, setups: one, covered: 20, proved: false, trouble: "out of memory" })).toBe(
    "The search broke off (out of memory). Stopped with 40.0\u00a0% of 50 combinations covered: the best so far, not proved.",
  )
  expect(outcomeText({ ...base, setups: [], covered: 20, proved: false })).toMatch(/^Nothing found yet\. Stopped/)
})

test("an outcome of an earlier kit or question says whose it is and proves nothing for the present", () => {
  const base = { kind: "searched" as const, combinations: 50, covered: 50, proved: true, trouble: null, lost: [] }
  const setups = [{ order: 3 } as FoundSetup]
  expect(outcomeText({ ...base, misses: [], setups }, "the earlier kit")).toBe(
    "This list belongs to the earlier kit: all 50 combinations were covered then. It proves nothing for what is asked now; search again.",
  )
  expect(outcomeText({ ...base, misses: [], setups: [], covered: 20, proved: false }, "the earlier question")).toBe(
    "This answer belongs to the earlier question: 40.0\u00a0% of 50 combinations were covered then. It proves nothing for what is asked now; search again.",
  )
})

test("what a list belongs to is told only of what has changed", () => {
  expect(earlierText({ bow: false, kit: false, question: false })).toBeNull()
  expect(earlierText({ bow: false, kit: true, question: false })).toBe("the earlier kit")
  expect(earlierText({ bow: true, kit: true, question: true })).toBe("the earlier bow, kit and question")
})

test("workers lost and a page that slept are told, with that the search goes on", () => {
  expect([lostText([]), sleptText(0)]).toEqual([null, null])
  expect(lostText(["out of memory"])).toBe(
    "A worker of this search was lost (out of memory); another does its part again.",
  )
  expect(lostText(["a worker fell silent", "a worker fell silent", "out of memory"])).toBe(
    "3 workers of this search were lost (a worker fell silent; out of memory); others do their parts again.",
  )
  expect(sleptText(17_000)).toBe("The page was asleep for 17\u00a0s; the search goes on from where it was.")
  expect(sleptText(300_000)).toContain("5\u00a0min")
})

test("a miss says whether the limit binds, is out of reach, or waits for the others", () => {
  const setup = {} as FoundSetup
  const nearest = { value: 37, by: 3, setup }
  expect(missText({ key: "forwardMm", nearest, alone: { value: 45, by: 0 } }, units)).toBe(
    "Balance point forward: binds; with the other limits kept the nearest is 37.0\u00a0mm, 3.0\u00a0mm off.",
  )
  expect(missText({ key: "yawLeast", nearest: null, alone: { value: 0.25, by: 0.05 } }, units)).toBe(
    "Yaw resistance: out of reach of this kit; the nearest is 0.250\u00a0kg·m², 0.050\u00a0kg·m² off.",
  )
  expect(missText({ key: "massMaxG", nearest: null, alone: { value: 2331, by: 0 } }, units)).toBe(
    "Mass: can be met by itself; the other limits cannot all be met together.",
  )
  expect(missText({ key: "massMaxG", nearest: { ...nearest, by: 0 }, alone: { value: 2331, by: 0 } }, units)).toBe(
    "Mass: is met.",
  )
})

test("a band whose ends are the wrong way round is named with both ends; one of a single value is fine", () => {
  expect(bandProblem("forwardMm", [90, 75], units)).toBe(
    "Balance point forward: from 90.0\u00a0mm to 75.0\u00a0mm is no band; “to” must not be less than “from”.",
  )
  expect([bandProblem("forwardMm", [75, 75], units), bandProblem("netLiftNm", [-2, 3], units)]).toEqual([null, null])
})

test("a search that is refused for its fields names each of them", () => {
  expect(wrongFieldsText(["mass"])).toBe("Not searched: “Mass” cannot be taken as it stands. Correct it first.")
  expect(wrongFieldsText(["mass", "balance point up, to", "count of side rod"])).toBe(
    "Not searched: “Mass”, “Balance point up, to” and “Count of side rod” cannot be taken as they stand. Correct them first.",
  )
})

test("a rig is told mount by mount, arms alike once", () => {
  const rod = { part: "rod", label: "long", massG: 100, lengthMm: 700, outerMm: 18, innerMm: 15 } as const
  const discs = { part: "weights", count: 3, eachG: 28, outerMm: 25, thicknessMm: 7 } as const
  const arm = (splayDeg: number) => ({ splayDeg, droopDeg: 5, chain: [rod, discs] as (typeof rod | typeof discs)[] })
  const vbar = { part: "vbar", massG: 90, lengthMm: 30, outerMm: 28, armOffsetMm: 20 } as const
  expect(rigText([], units)).toBe("nothing on the bow")
  expect(rigText([{ mount: "front", chain: [{ ...vbar, left: arm(40), right: arm(40) }, rod] }], units)).toBe(
    "Front: V-bar (both 40°/5°: long, 3 × 28\u00a0g), long",
  )
  expect(rigText([{ mount: "back", chain: [{ ...vbar, left: arm(40), right: arm(35) }] }], units)).toBe(
    "Back: V-bar (left 40°/5°: long, 3 × 28\u00a0g; right 35°/5°: long, 3 × 28\u00a0g)",
  )
})

test("a refusal is told in sentences", () => {
  const error = (message: string) => ({ code: "not-allowed" as const, path: "mounts", message })
  expect(refusalText([error("a mount is named twice"), error("none given")])).toBe(
    "A mount is named twice. None given.",
  )
})
