import { afterEach, expect, test, vi } from "vitest"
import { setNumber } from "../../src/commands/numbers"
import { createFrameStore, soon } from "../../src/state/frame"
import { fullBench } from "./benches"

/** A frame store whose frames come when the test says so. */
function stepped() {
  const bench = fullBench()
  const asked: (() => void)[] = []
  const frames = createFrameStore(bench.store, (tell) => asked.push(tell))
  const drag = (...lengths: number[]) => {
    for (const value of lengths) setNumber.run(bench, { key: "front/rod:lengthMm", value })
  }
  const frame = () => {
    const due = asked.splice(0)
    for (const tell of due) tell()
    return due.length
  }
  return { bench, frames, drag, frame }
}

test("listeners are told once a frame, however many changes it had", () => {
  const { frames, drag, frame } = stepped()
  let told = 0
  frames.subscribe(() => told++)
  drag(573, 577, 587)
  expect(told).toBe(0)
  expect(frame()).toBe(1)
  expect(told).toBe(1)
  drag(593)
  expect(frame()).toBe(1)
  expect(told).toBe(2)
})

test("no frame is asked for while nothing changes", () => {
  const { frames, drag, frame } = stepped()
  frames.subscribe(() => undefined)
  expect(frame()).toBe(0)
  drag(573)
  expect(frame()).toBe(1)
  expect(frame()).toBe(0)
})

test("what is shown between frames is the state of the last telling, and all listeners see the same one", () => {
  const { bench, frames, drag, frame } = stepped()
  const first = frames.latest()
  const seen: unknown[] = []
  frames.subscribe(() => seen.push(frames.latest()))
  frames.subscribe(() => seen.push(frames.latest()))
  drag(573, 577)
  expect(frames.latest()).toBe(first)
  frame()
  expect(seen).toEqual([bench.store.getState(), bench.store.getState()])
  expect(seen[0]).toBe(seen[1])
})

test("a change made while listeners are being told comes with the next frame", () => {
  const { bench, frames, drag, frame } = stepped()
  let once = true
  frames.subscribe(() => {
    if (once) drag(599)
    once = false
  })
  drag(573)
  frame()
  expect(frames.latest()).not.toBe(bench.store.getState())
  expect(frame()).toBe(1)
  expect(frames.latest()).toBe(bench.store.getState())
})

test("a listener that leaves is not told again, and the others are", () => {
  const { frames, drag, frame } = stepped()
  const told: string[] = []
  const leave = frames.subscribe(() => told.push("leaver"))
  frames.subscribe(() => told.push("stayer"))
  drag(573)
  frame()
  leave()
  drag(577)
  frame()
  expect(told).toEqual(["leaver", "stayer", "stayer"])
})

test("what a drag never changes is told only when it is another", () => {
  const { bench, frames, drag, frame } = stepped()
  let told = 0
  frames.subscribeSeldom(() => told++)
  drag(573)
  frame()
  expect(told).toBe(0)
  bench.setPreferences({ lengthUnit: "in" })
  frame()
  expect(told).toBe(1)
  const { scene } = bench.store.getState()
  bench.setView({ compared: { name: "held", scene } })
  drag(577)
  frame()
  expect(told).toBe(2)
})

afterEach(() => vi.unstubAllGlobals())

test("all that wait for the next frame share it, and one that fails keeps none of the others waiting", () => {
  const frames: (() => void)[] = []
  const reported: unknown[] = []
  vi.stubGlobal("requestAnimationFrame", (run: () => void) => frames.push(run))
  vi.stubGlobal("cancelAnimationFrame", () => undefined)
  vi.stubGlobal("reportError", (reason: unknown) => reported.push(reason))
  const called: number[] = []
  soon(() => called.push(2))
  soon(() => {
    throw new Error("drawn wrong")
  })
  soon(() => {
    called.push(3)
    soon(() => called.push(5))
  })
  expect(frames).toHaveLength(1)
  frames.shift()?.()
  expect(called).toEqual([2, 3])
  expect(reported).toEqual([new Error("drawn wrong")])
  // What was asked for meanwhile comes with the frame after.
  expect(frames).toHaveLength(1)
  frames.shift()?.()
  expect(called).toEqual([2, 3, 5])
})
