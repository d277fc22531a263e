import { describe, expect, test } from "vitest"
import { setNumber } from "../../src/commands/numbers"
import { openFile } from "../../src/files/openFile"
import { serializeScene } from "../../src/scene/serialize"
import { newScene } from "../../src/scene/templates"
import { hasUnsavedChanges } from "../../src/state/bench"
import { fullDocument } from "../scene/documents"
import { fullBench, fullScene, numberOn, sceneOn, stepsOn } from "../state/benches"

const file = (text: string, name = "theirs.json") => new File([text], name, { type: "application/json" })
const spoilt = (spoil: (document: ReturnType<typeof fullDocument>) => void) => {
  const document = fullDocument()
  spoil(document)
  return JSON.stringify(document)
}

test("a good file comes on the bench, is called by its name, counts as saved and puts an old notice away", async () => {
  const bench = fullBench()
  bench.setView({ notice: { tone: "problem", text: "an old one", errors: [] } })
  await openFile(bench, file(serializeScene(newScene())))
  const state = bench.store.getState()
  expect(state.scene).toEqual(newScene())
  expect(state).toMatchObject({ fileName: "theirs.json", notice: null, said: { text: "Opened theirs.json" } })
  expect(hasUnsavedChanges(state)).toBe(false)
  bench.undo()
  expect(sceneOn(bench)).toEqual(fullScene())
})

describe("a bad file is explained, and the bench stays as it is:", () => {
  test.each<[string, string, string, RegExp]>([
    ["cut off in the middle", '{\n  "format": "bow-balance-bench",\n  "ver', "", /^not JSON: line 3, column \d+/],
    ["empty", "", "", /^the file is empty$/],
    ["something else", '{ "kind": "shopping list" }', "format", /bow-balance-bench/],
    [
      "with a key too many",
      spoilt((d) => Object.assign(d, { colour: "red" })),
      "colour",
      /is not a key of this format/,
    ],
    [
      "with a number off its range",
      spoilt((d) => Object.assign((d.bow as object as { riser: object }).riser, { massG: 10_007 })),
      "bow.riser.massG",
      /10007 given; a number in 1 … 10000 g is needed/,
    ],
    ["of a newer bench", spoilt((d) => Object.assign(d, { version: 7 })), "version", /newer/],
  ])("%s", async (_what, text, path, message) => {
    const bench = fullBench()
    setNumber.run(bench, { key: "front/rod:lengthMm", value: 570 })
    const scene = sceneOn(bench)
    await openFile(bench, file(text, "odd.json"))
    expect(sceneOn(bench)).toBe(scene)
    expect(stepsOn(bench)).toHaveLength(1)
    expect(bench.store.getState().notice).toMatchObject({
      tone: "problem",
      text: "“odd.json” was not opened; the bench is as it was.",
      errors: [{ path, message: expect.stringMatching(message) }],
    })
  })

  test("valid, but of limbs that cannot be strung so", async () => {
    const scene = newScene()
    scene.bow.braceHeightMm = 490
    const bench = fullBench()
    await openFile(bench, file(serializeScene(scene)))
    expect(sceneOn(bench)).toEqual(fullScene())
    expect(bench.store.getState().notice?.errors).toMatchObject([{ code: "unsolvable", path: "bow.braceHeightMm" }])
  })

  test("far too large to be a scene", async () => {
    const bench = fullBench()
    await openFile(bench, file(" ".repeat(3_000_000), "film.json"))
    expect(sceneOn(bench)).toEqual(fullScene())
    expect(bench.store.getState().notice?.text).toMatch(/“film.json” was not opened: it is 3 MB/)
  })

  test("that cannot be read", async () => {
    const bench = fullBench()
    const gone = file("{}", "gone.json")
    gone.text = () => Promise.reject(new Error("NotReadableError"))
    await openFile(bench, gone)
    expect(bench.store.getState().notice).toMatchObject({ tone: "problem", text: "“gone.json” could not be read." })
  })
})

test("a bad file dropped in the middle of a drag does not end the drag", async () => {
  const bench = fullBench()
  bench.begin("drag")
  setNumber.run(bench, { key: "front/rod:lengthMm", value: 570 })
  await openFile(bench, file("{"))
  bench.cancel()
  expect(numberOn(bench, "front/rod:lengthMm")).toBe(710)
})
