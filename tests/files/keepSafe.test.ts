import { afterEach, beforeEach, expect, test, vi } from "vitest"
import { setNumber } from "../../src/commands/numbers"
import { readAutosave, readSetAside } from "../../src/files/autosave"
import { keepSafe } from "../../src/files/keepSafe"
import { readPreferences } from "../../src/files/preferences"
import { fullBench, fullScene } from "../state/benches"
import { memoryStore, refusingStore } from "./stores"

/** Longer than the quiet time before writing. */
const A_SECOND = 1000

/** The two places a page hears of being left. */
const page = () => Object.assign(new EventTarget(), { visibilityState: "visible" })

let leaving = new EventTarget()
let hiding = page()

beforeEach(() => {
  leaving = new EventTarget()
  hiding = page()
  vi.stubGlobal("window", leaving)
  vi.stubGlobal("document", hiding)
  vi.useFakeTimers({ now: 5000 })
})
afterEach(() => {
  vi.useRealTimers()
  vi.unstubAllGlobals()
})

function guarded(store = memoryStore()) {
  const bench = fullBench()
  const { stop } = keepSafe(bench, store, () => "beginner-one-rod")
  const setRod = (value: number) => setNumber.run(bench, { key: "front/rod:lengthMm", value })
  const rodKept = () => {
    const rod = readAutosave(store)?.scene.rig[0]?.chain[2]
    return rod?.part === "rod" ? rod.lengthMm : null
  }
  return { bench, store, stop, setRod, rodKept }
}

test("a change is kept once it has been quiet for a moment, with the scene asked for and the time", () => {
  const { setRod, rodKept, store } = guarded()
  setRod(570)
  expect(rodKept()).toBeNull()
  vi.advanceTimersByTime(A_SECOND)
  expect(rodKept()).toBe(570)
  expect(readAutosave(store)).toMatchObject({ unsaved: true, source: "beginner-one-rod", at: 5400 })
})

test("a drag is not written at every step", () => {
  const { setRod, rodKept, store } = guarded()
  let writes = 0
  const write = store.write
  store.write = (key, text) => {
    writes++
    return write(key, text)
  }
  for (let mm = 531; mm < 571; mm++) {
    setRod(mm)
    vi.advanceTimersByTime(16)
  }
  expect(writes).toBe(0)
  vi.advanceTimersByTime(A_SECOND)
  expect([writes, rodKept()]).toEqual([1, 570])
})

test("a page that is left or hidden writes at once what is not yet kept", () => {
  const left = guarded()
  left.setRod(570)
  leaving.dispatchEvent(new Event("pagehide"))
  expect(left.rodKept()).toBe(570)

  const hidden = guarded()
  hidden.setRod(530)
  hiding.dispatchEvent(new Event("visibilitychange"))
  expect(hidden.rodKept()).toBeNull()
  hiding.visibilityState = "hidden"
  hiding.dispatchEvent(new Event("visibilitychange"))
  expect(hidden.rodKept()).toBe(530)
})

test("saving to a file is kept too, though the scene is the same", () => {
  const { bench, setRod, store } = guarded()
  setRod(570)
  vi.advanceTimersByTime(A_SECOND)
  bench.markSaved("mine.json")
  vi.advanceTimersByTime(A_SECOND)
  expect(readAutosave(store)).toMatchObject({ unsaved: false, fileName: "mine.json" })
})

test("pointing, selecting and looking are not worth a write; preferences are, at once", () => {
  const { bench, store } = guarded()
  bench.setView({ hovered: "front/rod", selected: "front/rod", camera: "top" })
  vi.advanceTimersByTime(A_SECOND)
  expect(store.texts.size).toBe(0)
  bench.setPreferences({ theme: "dark" })
  expect(readPreferences(store).theme).toBe("dark")
})

test("a browser that keeps nothing is told to the coach once, and the bench goes on", () => {
  const { bench, setRod } = guarded({ ...memoryStore(), ...refusingStore })
  setRod(570)
  vi.advanceTimersByTime(A_SECOND)
  expect(bench.store.getState().notice).toMatchObject({
    tone: "problem",
    text: expect.stringContaining("does not keep unsaved work"),
  })
  bench.setView({ notice: null })
  setRod(573)
  vi.advanceTimersByTime(A_SECOND)
  expect(bench.store.getState().notice).toBeNull()
})

const work = { scene: { ...fullScene(), name: "set aside" }, fileName: null, at: 3000 }

test("what was set aside is kept at once, and what then comes or goes with the next autosave", () => {
  const bench = fullBench()
  bench.store.setState({ setAside: [work] })
  const store = memoryStore()
  keepSafe(bench, store, () => null)
  expect([readSetAside(store), readAutosave(store)]).toEqual([[work], null])
  bench.keepAside("discarded", [])
  vi.advanceTimersByTime(A_SECOND)
  expect(readSetAside(store)).toEqual([])
  expect(readAutosave(store)).not.toBeNull()
})

test("where the browser does not take what was set aside, the autosave is left as it is until it does", () => {
  const bench = fullBench()
  bench.store.setState({ setAside: [work] })
  const store = memoryStore()
  const write = store.write
  let full = true
  store.write = (key, text) => !(full && key === "set-aside") && write(key, text)
  keepSafe(bench, store, () => null)
  setNumber.run(bench, { key: "front/rod:lengthMm", value: 570 })
  vi.advanceTimersByTime(A_SECOND)
  expect(readAutosave(store)).toBeNull()
  expect(bench.store.getState().notice?.text).toContain("does not keep unsaved work")
  full = false
  setNumber.run(bench, { key: "front/rod:lengthMm", value: 573 })
  vi.advanceTimersByTime(A_SECOND)
  expect([readSetAside(store), readAutosave(store)?.unsaved]).toEqual([[work], true])
})

test("once stopped it writes no more", () => {
  const { setRod, rodKept, stop } = guarded()
  setRod(570)
  stop()
  vi.advanceTimersByTime(A_SECOND)
  leaving.dispatchEvent(new Event("pagehide"))
  expect(rodKept()).toBeNull()
})
