import { expect, test } from "vitest"
import { readAutosave, readSetAside } from "../../src/files/autosave"
import { writeAutosave } from "../../src/files/autosaveWrite"
import { writeSetAside } from "../../src/files/autosaveWrite"
import { readPreferences, writePreferences } from "../../src/files/preferences"
import { serializeScene } from "../../src/scene/serialize"
import { kept } from "../../src/state/kept"
import { memoryStore } from "../files/stores"
import { fullBench, fullScene, sceneOn } from "./benches"

test("every piece of the state has its home, and nothing else has", () => {
  expect(Object.keys(kept).sort()).toEqual(Object.keys(fullBench().store.getState()).sort())
})

test("what lives in the browser or the file comes back from there, and nothing that lives nowhere is written", () => {
  const bench = fullBench()
  bench.markSaved("mine.json")
  bench.setPreferences({ massUnit: "oz" })
  bench.setView({ selected: "front/rod#7", hovered: "front/rod#5", camera: "archer" })
  bench.say("a remark nobody keeps")
  bench.keepAside("set aside", [{ scene: { ...fullScene(), name: "set aside" }, fileName: null, at: 900 }])
  const store = memoryStore()
  writeSetAside(store, bench.store.getState().setAside)
  writeAutosave(store, bench.store.getState(), null, 1000)
  writePreferences(store, bench.store.getState().preferences)

  expect(readAutosave(store)).toMatchObject({ fileName: "mine.json", unsaved: false, scene: sceneOn(bench) })
  expect(readSetAside(store)).toEqual(bench.store.getState().setAside)
  expect(readPreferences(store)).toEqual(bench.store.getState().preferences)

  const written = [...store.texts.values(), serializeScene(sceneOn(bench))].join("\n")
  for (const passing of ["front/rod#7", "front/rod#5", "a remark nobody keeps", "evaluation", "gesture", "camera"]) {
    expect(written).not.toContain(passing)
  }
  expect(serializeScene(sceneOn(bench))).not.toContain("mine.json")
})
