/** What holds of any lesson's file, valid or not. */
import fc from "fast-check"
import { expect, test } from "vitest"
import { readLesson } from "../../src/clinic/lessons/read"
import { errorLine } from "../../src/scene/errors"
import { SEED } from "../property/arbitraries"
import { mutated } from "../property/mutated"
import { lessonIds, lessonText, sceneFile } from "./shippedLessons"

test("a shipped lesson with one thing changed is read or refused with its reasons", async () => {
  const lessons = fc.constantFrom(...lessonIds.map((id) => JSON.parse(lessonText(id)) as unknown))
  let refused = 0
  await fc.assert(
    fc.asyncProperty(mutated(lessons), async (document) => {
      const result = await readLesson(JSON.stringify(document), sceneFile)
      if (result.ok) return
      refused++
      expect(result.errors.length).toBeGreaterThan(0)
      for (const error of result.errors) {
        expect(errorLine(error).trim()).not.toBe("")
        expect(error.message).not.toMatch(/undefined|\[object|Invalid input/)
      }
    }),
    { seed: SEED, numRuns: 400 },
  )
  expect(refused).toBeGreaterThan(200)
})
