/** What holds of any file, valid or not. */
import fc from "fast-check"
import { expect, test } from "vitest"
import { errorLine } from "../../src/scene/errors"
import { parseScene, readScene } from "../../src/scene/parse"
import type { Scene } from "../../src/scene/schema"
import { serializeScene } from "../../src/scene/serialize"
import { anyScene, SEED } from "./arbitraries"
import { mutated } from "./mutated"

const RUNS = { seed: SEED, numRuns: 300 }

test("a scene saved and loaded is equal, and saved again gives the same text", () => {
  fc.assert(
    fc.property(anyScene, (scene) => {
      const text = serializeScene(scene)
      const again = parseScene(text)
      expect(again).toEqual({ ok: true, value: scene })
      expect(serializeScene((again as { value: Scene }).value)).toBe(text)
    }),
    RUNS,
  )
})

/** Parsing answers with a scene or with errors that say where and why; it never throws. */
function expectAnswer(result: ReturnType<typeof parseScene>): void {
  if (result.ok) return
  expect(result.errors.length).toBeGreaterThan(0)
  for (const error of result.errors) {
    expect(errorLine(error).trim()).not.toBe("")
    expect(error.message).not.toMatch(/undefined|\[object|Invalid input/)
  }
}

test("any text at all gets an answer", () => {
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: "binary" }), fc.json(), fc.string({ unit: "grapheme" })), (text) => {
      expectAnswer(parseScene(text))
    }),
    { ...RUNS, numRuns: 500 },
  )
})

test("any JSON in the envelope of a scene gets an answer", () => {
  fc.assert(
    fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (rest) => {
      expectAnswer(readScene({ ...rest, format: "bow-balance-bench", version: 1 }))
    }),
    RUNS,
  )
})

test("a valid file with one thing changed is read or refused with its reasons", () => {
  let refused = 0
  fc.assert(
    fc.property(mutated(anyScene), (document) => {
      const result = readScene(document)
      if (!result.ok) refused++
      expectAnswer(result)
      if (result.ok) expect(readScene(JSON.parse(serializeScene(result.value))).ok).toBe(true)
    }),
    { ...RUNS, numRuns: 600 },
  )
  expect(refused).toBeGreaterThan(200)
})

test("a text with a piece cut out or put in is read or refused with its reasons", () => {
  fc.assert(
    fc.property(anyScene, fc.nat(), fc.nat(40), fc.string({ maxLength: 5 }), (scene, at, cut, put) => {
      const text = serializeScene(scene)
      const from = at % text.length
      expectAnswer(parseScene(text.slice(0, from) + put + text.slice(from + cut)))
    }),
    { ...RUNS, numRuns: 600 },
  )
})
