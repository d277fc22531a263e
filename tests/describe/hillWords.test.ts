import { expect, test } from "vitest"
import { hillSentence } from "../../src/describe/hillText"
import { hillTargetLabel, motionLabel } from "../../src/describe/hillWords"

test("the target's label says up or down and how steep", () => {
  expect(hillTargetLabel(20)).toBe("target up the hill, 20°")
  expect(hillTargetLabel(-12.5)).toBe("target down the hill, 12.5°")
})

test("the hillside is put in a sentence: up, down and level", () => {
  expect(hillSentence(23)).toBe(
    "The hillside rises 23° toward the target, so the front is raised by as much. The bow turns; gravity and the plumb line do not.",
  )
  expect(hillSentence(-7)).toContain("falls 7° toward the target, so the front is lowered")
  expect(hillSentence(0)).toBe("Level ground: the target is as high as the archer.")
})

test("a motion is named with the bow's slope to a tenth, so that the words keep their width", () => {
  expect(motionLabel(12)).toBe("in motion, bow 12.0° up")
  expect(motionLabel(-3.14)).toBe("in motion, bow 3.1° down")
})
