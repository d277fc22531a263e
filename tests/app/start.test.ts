import { readFileSync } from "node:fs"
import { join } from "node:path"
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest"
import { firstScene, sceneAsked, startBench } from "../../src/app/start"
import { setNumber } from "../../src/commands/numbers"
import { readAutosave, readSetAside } from "../../src/files/autosave"
import { writeAutosave } from "../../src/files/autosaveWrite"
import type { BrowserStore } from "../../src/files/browserStore"
import { arrivingFileRules } from "../../src/files/fileRules"
import { writeSetAside } from "../../src/files/autosaveWrite"
import { keepSafe } from "../../src/files/keepSafe"
import { writePreferences } from "../../src/files/preferences"
import { parseScene } from "../../src/scene/parse"
import type { Scene } from "../../src/scene/schema"
import { type Bench, hasUnsavedChanges } from "../../src/state/bench"
import { defaultPreferences } from "../../src/state/preferences"
import { linkTo } from "../../src/takeaway/link/link"
import { serveScenes } from "../files/served"
import { memoryStore, refusingStore } from "../files/stores"
import { fullBench, fullScene, numberOn, sceneOn } from "../state/benches"

beforeEach(serveScenes)
afterEach(() => vi.unstubAllGlobals())

function shipped(id: string): Scene {
  const read = parseScene(readFileSync(join(import.meta.dirname, `../../scenes/${id}.json`), "utf8"))
  if (!read.ok) throw new Error(`scenes/${id}.json is not valid`)
  return read.value
}
const FIRST = "target-recurve-straight-bar"
const ROD = "front/rod:lengthMm"

/** The bench as the page starts it, with the rules that the page has at that moment. */
const start = (store: BrowserStore, search: string) => startBench(store, search, arrivingFileRules().rules)

/** A browser in which the full scene was left on the bench: as its file has it, or with a rod changed since. */
function leftWith({ unsaved, source = null }: { unsaved: boolean; source?: string | null }) {
  const bench = fullBench()
  bench.markSaved("mine.json")
  if (unsaved) setNumber.run(bench, { key: ROD, value: 570 })
  const store = memoryStore()
  writeAutosave(store, bench.store.getState(), source, Date.UTC(2030, 4, 3, 12, 17))
  return store
}

test("the first scene is a shipped file in the form the bench saves, since nothing checks it before it is shown", () => {
  expect(firstScene).toEqual(shipped(FIRST))
})

test("the scene asked for is what the address says, if anything", () => {
  expect(sceneAsked("?scene=beginner-one-rod")).toBe("beginner-one-rod")
  expect(sceneAsked("?a=2&scene=some%20name&b=3")).toBe("some name")
  expect(sceneAsked("?a=2")).toBeNull()
  expect(sceneAsked("")).toBeNull()
})

describe("without a scene in the address the bench starts", () => {
  test("with the first shipped scene, nothing to undo, nothing to say, where nothing was left", async () => {
    for (const store of [memoryStore(), refusingStore]) {
      const bench = await start(store, "")
      expect(sceneOn(bench)).toEqual(shipped(FIRST))
      expect(bench.store.getState()).toMatchObject({ notice: null, fileName: null, history: { past: [], future: [] } })
      expect(hasUnsavedChanges(bench.store.getState())).toBe(false)
    }
  })

  test("with what was left there, as its file has it, without a word", async () => {
    const bench = await start(leftWith({ unsaved: false }), "")
    expect(sceneOn(bench)).toEqual(fullScene())
    expect(bench.store.getState()).toMatchObject({ notice: null, fileName: "mine.json", history: { past: [] } })
    expect(hasUnsavedChanges(bench.store.getState())).toBe(false)
  })

  test("with unsaved work that was left there, and says from when it is", async () => {
    const bench = await start(leftWith({ unsaved: true, source: "beginner-one-rod" }), "")
    expect(numberOn(bench, ROD)).toBe(570)
    expect(bench.store.getState()).toMatchObject({
      notice: { tone: "info", text: expect.stringMatching(/^Your unsaved work from .*2030.* is back\.$/) },
      history: { past: [], future: [] },
    })
    expect(hasUnsavedChanges(bench.store.getState())).toBe(true)
  })
})

describe("with a scene in the address the bench starts", () => {
  test("with that scene and nothing to undo", async () => {
    const bench = await start(memoryStore(), "?scene=beginner-one-rod")
    expect(sceneOn(bench)).toEqual(shipped("beginner-one-rod"))
    expect(bench.store.getState()).toMatchObject({ notice: null, fileName: null, history: { past: [], future: [] } })
    expect(hasUnsavedChanges(bench.store.getState())).toBe(false)
  })

  test("with that scene, and unsaved work on another is one button away", async () => {
    const bench = await start(leftWith({ unsaved: true }), "?scene=beginner-one-rod")
    expect(sceneOn(bench)).toEqual(shipped("beginner-one-rod"))
    const { notice } = bench.store.getState()
    expect(notice).toMatchObject({
      tone: "info",
      text: expect.stringMatching(/^Unsaved work from .*2030.* is kept\.$/),
    })
    notice?.offer?.run()
    await vi.waitFor(() => expect(numberOn(bench, ROD)).toBe(570))
    expect(bench.store.getState().fileName).toBe("mine.json")
    expect(hasUnsavedChanges(bench.store.getState())).toBe(true)
    bench.undo()
    expect(sceneOn(bench)).toEqual(shipped("beginner-one-rod"))
  })

  test("with unsaved work that began at the same address, so that a reload loses nothing", async () => {
    const store = leftWith({ unsaved: true, source: "beginner-one-rod" })
    const bench = await start(store, "?scene=beginner-one-rod")
    expect(numberOn(bench, ROD)).toBe(570)
    expect(bench.store.getState().notice?.text).toMatch(/is back\.$/)
  })

  test("with that scene fresh, and no word, where what was left at the address is in a file", async () => {
    const store = leftWith({ unsaved: false, source: "beginner-one-rod" })
    const bench = await start(store, "?scene=beginner-one-rod")
    expect(sceneOn(bench)).toEqual(shipped("beginner-one-rod"))
    expect(bench.store.getState().notice).toBeNull()
  })
})

describe("work that was set aside", () => {
  const named = (name: string, at: number) => ({ scene: { ...fullScene(), name }, fileName: null, at })
  const aside = (bench: Bench) => bench.store.getState().setAside.map(({ scene }) => scene.name)
  const notice = (bench: Bench) => bench.store.getState().notice

  /** Starts as the page does, changes one number and leaves. */
  async function visit(store: BrowserStore, search: string, lengthMm: number) {
    const leaving = new EventTarget()
    vi.stubGlobal("window", leaving)
    vi.stubGlobal("document", new EventTarget())
    const bench = await start(store, search)
    const { stop } = keepSafe(bench, store, () => sceneAsked(search))
    setNumber.run(bench, { key: ROD, value: lengthMm })
    leaving.dispatchEvent(new Event("pagehide"))
    stop()
  }

  test("outlives a change to the scene that took its place, and is offered at every start until it is back", async () => {
    const store = leftWith({ unsaved: true })
    await visit(store, "?scene=beginner-one-rod", 610)
    const again = await start(store, "?scene=beginner-one-rod")
    expect(numberOn(again, ROD)).toBe(610)
    expect(notice(again)?.text).toMatch(/^Your unsaved work from .* is back\. Unsaved work from .*2030.* is kept\.$/)
    notice(again)?.offer?.run()
    await vi.waitFor(() => expect(numberOn(again, ROD)).toBe(570))
    expect(again.store.getState().fileName).toBe("mine.json")
    expect(aside(again)).toEqual([shipped("beginner-one-rod").name])
  })

  test("is offered without a scene in the address too, the latest first, with how many more there are", async () => {
    const store = memoryStore()
    writeSetAside(store, [named("second", Date.UTC(2031, 4, 3, 12)), named("first", Date.UTC(2029, 4, 3, 12))])
    const bench = await start(store, "")
    expect(sceneOn(bench)).toEqual(shipped(FIRST))
    expect(notice(bench)?.text).toMatch(/^Unsaved work from .*2031.* and 1 more is kept\.$/)
    expect(aside(bench)).toEqual(["second", "first"])
    expect(bench.store.getState().history.past).toEqual([])
  })

  test("is there once, however often the page opens before anything changes, and not beside itself", async () => {
    const store = leftWith({ unsaved: true })
    for (const _ of [2, 3]) {
      const bench = await start(store, "?scene=beginner-one-rod")
      vi.stubGlobal("window", new EventTarget())
      vi.stubGlobal("document", new EventTarget())
      keepSafe(bench, store, () => "beginner-one-rod").stop()
      expect(readSetAside(store)).toHaveLength(1)
    }
    const bench = await start(store, "")
    expect(numberOn(bench, ROD)).toBe(570)
    expect(bench.store.getState().setAside).toEqual([])
  })

  test("stays where it is when the scene in the address is not there", async () => {
    const store = leftWith({ unsaved: true })
    writeSetAside(store, [named("other", 1234)])
    const bench = await start(store, "?scene=no-such-bow")
    expect([numberOn(bench, ROD), aside(bench)]).toEqual([570, ["other"]])
    expect(notice(bench)?.tone).toBe("problem")
  })
})

describe("a start without the part that reads what is kept", () => {
  beforeEach(() => {
    vi.doMock("../../src/files/autosave", () => {
      throw new Error("no network")
    })
  })
  afterEach(() => vi.doUnmock("../../src/files/autosave"))

  test("says so, and lays unsaved work aside so that a change does not take its place", async () => {
    const store = leftWith({ unsaved: true })
    for (const _ of [2, 3]) {
      const bench = await start(store, "")
      expect(bench.store.getState().notice).toMatchObject({ tone: "problem", text: expect.stringContaining("Reload") })
      writeAutosave(store, bench.store.getState(), null, 1234)
    }
    expect(readSetAside(store).map(({ fileName }) => fileName)).toEqual(["mine.json"])
  })

  test("lays nothing aside that is in a file, nor what is no work at all", async () => {
    for (const text of [null, "{ half", "[2, 3]"]) {
      const store = leftWith({ unsaved: false })
      if (text !== null) store.texts.set("autosave", text)
      await start(store, "")
      expect(readSetAside(store)).toEqual([])
    }
  })
})

describe("a scene in the address that does not come with the bench is explained, and the bench starts", () => {
  test("with the first shipped scene where nothing was left", async () => {
    const bench = await start(memoryStore(), "?scene=no-such-bow")
    expect(sceneOn(bench)).toEqual(shipped(FIRST))
    expect(bench.store.getState().notice).toMatchObject({
      tone: "problem",
      errors: [{ message: 'scene "no-such-bow" does not come with the bench' }],
    })
  })

  test("with what was left there", async () => {
    const bench = await start(leftWith({ unsaved: true }), "?scene=no-such-bow")
    expect(numberOn(bench, ROD)).toBe(570)
    expect(bench.store.getState().notice?.errors[0]?.message).toContain('"no-such-bow"')
  })
})

test("starting reads the preferences and leaves what is kept as it is", async () => {
  const store = leftWith({ unsaved: true })
  writePreferences(store, { ...defaultPreferences, lengthUnit: "in" })
  const kept = readAutosave(store)
  const bench = await start(store, "?scene=beginner-one-rod")
  expect(bench.store.getState().preferences).toEqual({ ...defaultPreferences, lengthUnit: "in" })
  expect(readAutosave(store)).toEqual(kept)
})

describe("with a setup in a link the bench starts", () => {
  const linked = (id: string) => new URL(linkTo(shipped(id), "https://bench.example/", { everything: true })).hash
  const startAt = (store: BrowserStore, search: string, hash: string) =>
    startBench(store, search, arrivingFileRules().rules, hash)

  test("with that setup, which is in no file yet, whatever scene the address names", async () => {
    const bench = await startAt(memoryStore(), "?scene=beginner-one-rod", linked("short-hunting-rod"))
    expect(sceneOn(bench)).toEqual(shipped("short-hunting-rod"))
    expect(bench.store.getState()).toMatchObject({ notice: null, fileName: null, history: { past: [], future: [] } })
    expect(hasUnsavedChanges(bench.store.getState())).toBe(true)
  })

  test("with unsaved work laid aside for it, unless that is the very same", async () => {
    const hash = linked("short-hunting-rod")
    const bench = await startAt(leftWith({ unsaved: true }), "", hash)
    expect(sceneOn(bench)).toEqual(shipped("short-hunting-rod"))
    expect(bench.store.getState().setAside.map(({ fileName }) => fileName)).toEqual(["mine.json"])
    const store = memoryStore()
    writeAutosave(store, bench.store.getState(), null, Date.UTC(2030, 4, 3))
    expect((await startAt(store, "", hash)).store.getState().setAside).toEqual([])
  })

  test("as it was left, and says what is wrong, where the link is damaged", async () => {
    const bench = await startAt(leftWith({ unsaved: true }), "", linked("short-hunting-rod").slice(0, -7))
    expect(numberOn(bench, ROD)).toBe(570)
    expect(bench.store.getState().notice).toMatchObject({
      tone: "problem",
      errors: [{ message: expect.stringMatching(/the link is damaged/) }],
    })
  })
})
