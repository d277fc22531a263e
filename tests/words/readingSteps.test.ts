import { expect, test } from "vitest"
import { readingSteps } from "../../src/words/fr/readingSteps"

test("in French taps left out and swings without one agree with their number", () => {
  expect([readingSteps.missed(1), readingSteps.missed(3)]).toEqual(["1 sans appui, comptée", "3 sans appui, comptées"])
  expect([readingSteps.doubled(1), readingSteps.doubled(2)]).toEqual([
    "1 appui en double écarté",
    "2 appuis en double écartés",
  ])
})
