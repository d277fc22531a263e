import { expect, test } from "vitest"
import {
  flatnessSentence,
  hangPlaceText,
  hangSentence,
  rangeProblemText,
  slopeCsv,
  slopePointText,
} from "../../src/describe/hillText"
import { gravityInBow, poseRotation } from "../../src/core/balance"
import { multiply } from "../../src/core/solids"
import { swingRest } from "../../src/core/swing"
import { hangPlaces, slopeComparison } from "../../src/scene/hills"
import { checkedRanges } from "../../src/scene/hills/ranges"
import { fullDocument } from "../scene/documents"
import { hungDocument, sceneOf } from "../scene/scenes"

const DEGREE = Math.PI / 180
const units = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const

function sentence(slopeDeg: number, cantDeg: number, joint: "hinge" | "ball", stopDeg: number): string {
  const gravity = gravityInBow(poseRotation(slopeDeg * DEGREE, cantDeg * DEGREE))
  const { direction, onStop } = swingRest(gravity, joint, stopDeg * DEGREE)
  return hangSentence({ name: "Back swing weight", joint, stem: direction, gravity, onStop, slopeDeg, cantDeg })
}

test("a raised front sends the weight toward the archer in the bow's frame, plumb in the world", () => {
  expect(sentence(20, 0, "hinge", 90)).toBe(
    "Front raised 20°: the back swing weight hangs 20° toward the archer in the bow's own frame, though plumb in the world.",
  )
  expect(sentence(-7, 0, "ball", 90)).toBe(
    "Front lowered 7°: the back swing weight hangs 7° toward the target in the bow's own frame, though plumb in the world.",
  )
})

test("held level the weight hangs straight down in both frames", () => {
  expect(sentence(0, 0, "hinge", 90)).toBe(
    "Held level: the back swing weight hangs straight down, in the bow's own frame and in the world.",
  )
})

test("a weight on its stop is said to be short of plumb by what the stop keeps it from", () => {
  expect(sentence(20, 0, "hinge", 15)).toBe(
    "Front raised 20°: the back swing weight leans on its stop, 15° from the bow's own down and 5° short of plumb.",
  )
})

test("a canted hinge is not called plumb, a canted ball is", () => {
  expect(sentence(0, 11, "hinge", 90)).toContain("so the cant leaves it 11° from plumb.")
  expect(sentence(0, -11, "ball", 90)).toBe(
    "Level, top canted 11° left: the back swing weight hangs 11° to the side in the bow's own frame, though plumb in the world.",
  )
})

test("the words say what the picture shows: plumb in the world, and the way the stem leans in the bow", () => {
  for (const slopeDeg of [-41, -13, 17, 37]) {
    for (const cantDeg of [-11, 0, 23]) {
      const rotation = poseRotation(slopeDeg * DEGREE, cantDeg * DEGREE)
      const { direction } = swingRest(gravityInBow(rotation), "ball", 80 * DEGREE)
      const [x, y, z] = multiply(rotation, direction)
      expect(Math.hypot(x, y + 1, z)).toBeLessThan(1e-12)
      const way = direction[0] < 0 ? "toward the archer" : "toward the target"
      expect(way).toBe(slopeDeg > 0 ? "toward the archer" : "toward the target")
      expect(sentence(slopeDeg, cantDeg, "ball", 80)).toMatch(
        new RegExp(`${way} in the bow's own frame, though plumb in the world\\.$`),
      )
    }
  }
})

const slopesOf = (document: Record<string, unknown>) => {
  const found = slopeComparison(sceneOf(document))
  if (!found.ok) throw new Error(found.errors[0]?.message)
  return found.value
}

test("a rig without a swing weight has one column of net lift and one number a slope", () => {
  const slopes = { ...slopesOf(fullDocument()), hasSwing: false }
  expect(slopeCsv(slopes).split("\r\n")[0]).toBe("slope deg,net lift N·m")
  expect(slopePointText(slopes, 45 + 15, units)).toMatch(/^15° up: net lift \u2212?\d+\.\d\d\u00a0N·m\.$/)
})

test("a rig with one is saved with all three curves, unrounded", () => {
  const slopes = slopesOf(hungDocument())
  const lines = slopeCsv(slopes).trimEnd().split("\r\n")
  expect(lines).toHaveLength(92)
  expect(lines[1]?.split(",").map(Number)).toEqual([
    -45,
    slopes.free.netLift[0],
    slopes.locked.netLift[0],
    slopes.without.netLift[0],
  ])
})

test("a setup held to compare has its own words and its own column", () => {
  const slopes = slopesOf(hungDocument())
  const held = slopesOf(fullDocument()).free
  expect(slopePointText(slopes, 45 + 15, units, held)).toMatch(/, without it [^;]+; the held setup [^;]+\.$/)
  const lines = slopeCsv(slopes, held).split("\r\n")
  expect(lines[0]).toMatch(/,net lift of the held setup N·m$/)
  expect(Number(lines[1]?.split(",").at(-1))).toBe(held.netLift[0])
})

test("the sentence on flatness says which way the weight works", () => {
  const curve = (flatness: number) => ({ netLift: [], flatness })
  const slopes = { ...slopesOf(hungDocument()), free: curve(0.2), locked: curve(0.7), without: curve(0.3) }
  expect(flatnessSentence(slopes, units)).toBe(
    "Hanging free, the weight takes 0.50\u00a0N·m off the spread of the locked one; without it the bow would be less flat, with 0.30\u00a0N·m.",
  )
  expect(flatnessSentence({ ...slopes, free: curve(0.9) }, units)).toContain("adds 0.20\u00a0N·m")
})

test("places to hang from are called by mount, chain and arm", () => {
  const names = hangPlaces(sceneOf(hungDocument())).map(hangPlaceText)
  expect(names).toContain("End of the back chain")
  expect(names).toContain("Left arm")
  expect(names).toContain("Both arms")
  expect(names).toContain("Lower mount")
  expect(names).toContain("V-bar 2 left arm")
  expect(new Set(names).size).toBe(names.length)
})

test("a range that cannot be searched is named as the page names it", () => {
  const ranges = { stemLengthMm: { from: 0, to: 254, step: 5 }, bobMassG: { from: 30, to: 20, step: 5 } }
  const checked = checkedRanges(ranges, 3)
  const inches = { ...units, lengthUnit: "in" } as const
  expect(checked.ok ? [] : checked.errors.map((error) => rangeProblemText(error, inches))).toEqual([
    "Stem, from: 0 given; 0.0394 … 39.3701\u00a0in is needed.",
    "Bob, to: 20 given; no less than 30 is needed.",
  ])
  expect(rangeProblemText({ code: "not-allowed", path: "", message: "too many" }, inches)).toBe("too many.")
})
