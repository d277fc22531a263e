import { afterEach, beforeEach, expect, test, vi } from "vitest"
import { GAP, LOOK_EVERY, watchSleep } from "../../src/files/tabSleep"

const page = new EventTarget()
beforeEach(() => {
  vi.useFakeTimers()
  vi.stubGlobal("document", page)
})
afterEach(() => {
  vi.useRealTimers()
  vi.unstubAllGlobals()
})
const pass = (ms: number) => vi.setSystemTime(Date.now() + ms)

test("a page that was frozen tells how long when it resumes, once", () => {
  const slept: number[] = []
  const watch = watchSleep((ms) => slept.push(ms))
  page.dispatchEvent(new Event("freeze"))
  pass(7 * GAP)
  page.dispatchEvent(new Event("resume"))
  vi.advanceTimersByTime(5 * LOOK_EVERY)
  expect(slept).toEqual([7 * GAP])
  watch.stop()
})

test("a machine that slept without a word to the page is noticed by its clock, at the latest with the next look", () => {
  const slept: number[] = []
  const watch = watchSleep((ms) => slept.push(ms))
  vi.advanceTimersByTime(30 * LOOK_EVERY)
  pass(3 * GAP)
  vi.advanceTimersByTime(2 * LOOK_EVERY)
  expect(slept).toEqual([3 * GAP + LOOK_EVERY])
  watch.stop()
  pass(5 * GAP)
  page.dispatchEvent(new Event("visibilitychange"))
  vi.advanceTimersByTime(3 * LOOK_EVERY)
  expect(slept).toHaveLength(1)
})

test("a tab in the background whose search went on has not slept, however slow its timers", () => {
  const slept: number[] = []
  const watch = watchSleep((ms) => slept.push(ms))
  for (let times = 0; times < 20; times++) {
    pass(GAP / 2)
    watch.alive()
  }
  vi.advanceTimersByTime(LOOK_EVERY)
  expect(slept).toEqual([])
  watch.stop()
})
