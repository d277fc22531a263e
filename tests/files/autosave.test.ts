import { expect, test } from "vitest"
import { setNumber } from "../../src/commands/numbers"
import { readAutosave, readSetAside } from "../../src/files/autosave"
import { writeAutosave } from "../../src/files/autosaveWrite"
import { writeSetAside } from "../../src/files/autosaveWrite"
import { fullBench, fullScene, sceneOn } from "../state/benches"
import { memoryStore, refusingStore } from "./stores"

test("what was on the bench comes back with its file, its address, its time and whether the file has it", () => {
  const bench = fullBench()
  bench.markSaved("mine.json")
  const store = memoryStore()
  expect(writeAutosave(store, bench.store.getState(), "beginner-one-rod", 1234)).toBe(true)
  expect(readAutosave(store)).toEqual({
    scene: sceneOn(bench),
    fileName: "mine.json",
    unsaved: false,
    source: "beginner-one-rod",
    at: 1234,
  })
  setNumber.run(bench, { key: "front/rod:lengthMm", value: 570 })
  writeAutosave(store, bench.store.getState(), null, 2345)
  expect(readAutosave(store)).toEqual({
    scene: sceneOn(bench),
    fileName: "mine.json",
    unsaved: true,
    source: null,
    at: 2345,
  })
})

test("the text kept is that of a scene file, so that it could be rescued by hand", () => {
  const bench = fullBench()
  const store = memoryStore()
  writeAutosave(store, bench.store.getState(), null, 1234)
  const [kept] = [...store.texts.values()]
  expect(JSON.parse(JSON.parse(kept!).text)).toEqual(JSON.parse(JSON.stringify(sceneOn(bench))))
})

test("nothing kept is nothing to restore, and a browser that keeps nothing says so", () => {
  expect(readAutosave(memoryStore())).toBeNull()
  expect(readAutosave(refusingStore)).toBeNull()
  expect(writeAutosave(refusingStore, fullBench().store.getState(), null, 1234)).toBe(false)
})

test("what was set aside comes back in its order, without what cannot be read", () => {
  const work = (name: string, at: number) => ({ scene: { ...fullScene(), name }, fileName: null, at })
  const list = [work("third", 7), work("second", 5), work("first", 3)]
  const store = memoryStore()
  expect(writeSetAside(store, list)).toBe(true)
  expect(readSetAside(store)).toEqual(list)
  const [third, second, first] = JSON.parse(store.texts.get("set-aside")!)
  store.texts.set("set-aside", JSON.stringify([third, { ...second, text: "{}" }, 2, first]))
  expect(readSetAside(store).map(({ at }) => at)).toEqual([7, 3])
  for (const spoilt of ["{ half", "{}"]) {
    store.texts.set("set-aside", spoilt)
    expect(readSetAside(store)).toEqual([])
  }
})

test.each<[string, (record: Record<string, unknown>) => unknown]>([
  ["that is not JSON", () => "{ half"],
  ["that is no record", () => [2, 3]],
  ["without a time", ({ at: _, ...rest }) => rest],
  [
    "with a scene that is not valid",
    (record) => ({ ...record, text: '{ "format": "bow-balance-bench", "version": 1 }' }),
  ],
  [
    "with a scene of a newer bench",
    (record) => ({ ...record, text: '{ "format": "bow-balance-bench", "version": 7 }' }),
  ],
])("a record %s is nothing to restore", (_what, spoil) => {
  const store = memoryStore()
  writeAutosave(store, fullBench().store.getState(), null, 1234)
  expect(readAutosave(store)).not.toBeNull()
  const spoilt = spoil(JSON.parse(store.texts.get("autosave")!))
  store.texts.set("autosave", typeof spoilt === "string" ? spoilt : JSON.stringify(spoilt))
  expect(readAutosave(store)).toBeNull()
})
