import { afterEach, expect, test, vi } from "vitest"
import { arrivingFileRules } from "../../src/files/fileRules"
import type { FileRules } from "../../src/state/check"
import { fullScene } from "../state/benches"

afterEach(() => vi.useRealTimers())

test("until the file's rules have come the rules between numbers hold; then the whole file's do", async () => {
  const contradicting = fullScene()
  contradicting.bow.drawLengthMm = 170
  const misspelt = Object.assign(fullScene(), { colour: "red" })
  const { rules, fetch } = arrivingFileRules()
  const paths = (scene: ReturnType<typeof fullScene>) => rules(scene).map(({ path }) => path)
  expect([paths(fullScene()), paths(contradicting), paths(misspelt)]).toEqual([[], ["bow.drawLengthMm"], []])
  expect(await fetch()).toBe(true)
  expect([paths(fullScene()), paths(contradicting), paths(misspelt)]).toEqual([[], ["bow.drawLengthMm"], ["colour"]])
})

/** Rules that come at the given try and refuse everything then. */
function arrivingAt(arrives: number) {
  vi.useFakeTimers()
  let tries = 0
  const refusing: FileRules = () => [{ code: "not-allowed", path: "here", message: "no" }]
  const load = () => (++tries < arrives ? Promise.reject(new Error("no network")) : Promise.resolve(refusing))
  const stayedAway = vi.fn()
  const arriving = arrivingFileRules(stayedAway, load)
  const change = () => arriving.rules(fullScene()).length
  return { ...arriving, change, stayedAway, tries: () => tries }
}

test("rules that could not be fetched are asked for again by a later change, not by every one", async () => {
  const { fetch, change, stayedAway, tries } = arrivingAt(2)
  expect(await fetch()).toBe(false)
  for (let frame = 0; frame < 30; frame++) change()
  expect([tries(), change()]).toEqual([1, 0])
  await vi.advanceTimersByTimeAsync(5000)
  change()
  change()
  await vi.advanceTimersByTimeAsync(0)
  expect([tries(), change(), stayedAway.mock.calls.length]).toEqual([2, 1, 0])
  await vi.advanceTimersByTimeAsync(5000)
  change()
  expect(tries()).toBe(2)
})

test("that the rules stay away is told once, and they are asked for all the same", async () => {
  const { fetch, change, stayedAway, tries } = arrivingAt(5)
  await fetch()
  expect(stayedAway).not.toHaveBeenCalled()
  for (let again = 2; again <= 5; again++) {
    await vi.advanceTimersByTimeAsync(5000)
    change()
    await vi.advanceTimersByTimeAsync(0)
    expect([tries(), stayedAway.mock.calls.length]).toEqual([again, 1])
  }
  expect(change()).toBe(1)
})
