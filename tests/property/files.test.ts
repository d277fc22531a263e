/** What holds of any file, valid or not. */
import fc from "fast-check"
import { expect, test } from "vitest"
import { errorLine } from "../../src/scene/errors"
import { parseScene, readScene } from "../../src/scene/parse"
import type { Scene } from "../../src/scene/schema"
import { serializeScene } from "../../src/scene/serialize"
import { anyScene, SEED } from "./arbitraries"

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

/** Every place in a document: the steps to it. */
function places(node: unknown, here: (string | number)[] = []): (string | number)[][] {
  if (node === null || typeof node !== "object") return [here]
  const keys = Array.isArray(node) ? node.map((_, index) => index) : Object.keys(node)
  return [here, ...keys.flatMap((key) => places((node as Record<string | number, unknown>)[key], [...here, key]))]
}

const odd = fc.oneof(
  fc.jsonValue(),
  fc.constantFrom(null, true, -1, 0, 1e308, -1e308, 5e-324, 1.5, "", "rod", "__proto__", [], {}, [[]], { part: "rod" }),
  fc.double(),
)

/** A valid document with one place of it replaced, removed, or given one key more. */
const mutated = fc
  .tuple(anyScene, fc.nat(), odd, fc.constantFrom("replace", "remove", "extend"), fc.string())
  .map(([scene, which, value, how, key]) => {
    const document = structuredClone(scene) as unknown
    const all = places(document).filter((each) => each.length > 0)
    const place = all[which % all.length]!
    const last = place.at(-1)!
    const holder = place
      .slice(0, -1)
      .reduce((node, step) => (node as Record<string | number, unknown>)[step], document) as Record<
      string | number,
      unknown
    >
    if (how === "remove") delete holder[last]
    else if (how === "replace") holder[last] = value
    else if (!Array.isArray(holder)) holder[key] = value
    return document
  })

test("a valid file with one thing changed is read or refused with its reasons", () => {
  let refused = 0
  fc.assert(
    fc.property(mutated, (document) => {
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
