import { afterEach, beforeEach, expect, test, vi } from "vitest"
import { LISTEN_EVERY, type PageWorker, SILENT_AT_FIRST, SILENT_TIMES, spawning } from "../../src/files/findWorkers"
import { type Order, type Outcome, type Progress, questionFor, serveFind, startFind } from "../../src/scene/find"
import { readKit } from "../../src/scene/kit"
import { kitDocument } from "../scene/kit/kits"
import { fullScene } from "../state/benches"

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

const kit = readKit(kitDocument())
if (!kit.ok) throw new Error("the kit is not valid")
const scene = { ...fullScene(), target: {} }
const asked = { scene, kit: kit.value, question: { ...questionFor(scene), mostDiscs: 1, count: 3 } }

/** A browser's worker without a browser; `hears` says whether an order still reaches it. */
function fake(hears: (order: Order) => boolean): PageWorker & { ended: boolean } {
  const soon = () => new Promise<void>((resolve) => setTimeout(resolve))
  const serve = serveFind(
    (data) => setTimeout(() => !worker.ended && worker.onmessage?.call(worker as unknown as Worker, event(data))),
    soon,
  )
  const event = (data: unknown) => ({ data }) as MessageEvent
  const worker: PageWorker & { ended: boolean } = {
    ended: false,
    onmessage: null,
    onerror: null,
    onmessageerror: null,
    postMessage(order: Order) {
      if (hears(order)) setTimeout(() => serve(order))
    },
    terminate() {
      worker.ended = true
    },
  }
  return worker
}

/** Searches with one worker at a time, the first of which is `first`. */
function search(first: () => PageWorker) {
  let made = 0
  const told: Progress[] = []
  const outcomes: Outcome[] = []
  const spawn = spawning(() => (made++ === 0 ? first() : fake(() => true)))
  startFind(asked, 1, spawn, (progress) => told.push(progress), outcomes.push.bind(outcomes))
  return { told, outcomes, made: () => made }
}
const proved = { kind: "searched", proved: true, trouble: null }

test("a worker that falls silent at its task is noticed in a few seconds, told, ended and replaced", async () => {
  const silent = fake(({ kind }) => kind === "ask")
  const { told, outcomes, made } = search(() => silent)
  await vi.advanceTimersByTimeAsync((SILENT_TIMES - 1) * LISTEN_EVERY)
  expect([made(), silent.ended]).toEqual([1, false])
  await vi.advanceTimersByTimeAsync(2.5 * LISTEN_EVERY)
  expect([made(), silent.ended]).toEqual([2, true])
  expect(told.some(({ lost }) => lost[0] === "a worker fell silent")).toBe(true)
  await vi.runAllTimersAsync()
  expect(outcomes).toEqual([expect.objectContaining({ ...proved, lost: ["a worker fell silent"] })])
})

test("a worker that never says a word is given the time to be fetched, and then replaced", async () => {
  const { outcomes, made } = search(() => fake(() => false))
  await vi.advanceTimersByTimeAsync(SILENT_AT_FIRST * LISTEN_EVERY)
  expect(made()).toBe(1)
  await vi.advanceTimersByTimeAsync(1.5 * LISTEN_EVERY)
  expect(made()).toBe(2)
  await vi.runAllTimersAsync()
  expect(outcomes).toEqual([expect.objectContaining(proved)])
})

test("a worker that throws, or cannot even be made, is replaced at once with its own words", async () => {
  const broken = fake(({ kind }) => kind === "ask")
  const { outcomes } = search(() => broken)
  await vi.advanceTimersByTimeAsync(LISTEN_EVERY)
  broken.onerror?.call(broken as unknown as Worker, { message: "out of memory", preventDefault() {} } as ErrorEvent)
  await vi.advanceTimersByTimeAsync(LISTEN_EVERY)
  expect(outcomes).toEqual([expect.objectContaining({ ...proved, lost: ["out of memory"] })])

  const unmade = search(() => {
    throw new Error("no worker here")
  })
  await vi.advanceTimersByTimeAsync(LISTEN_EVERY)
  expect(unmade.outcomes).toEqual([expect.objectContaining({ ...proved, lost: ["no worker here"] })])
})

test("a page that slept gives its workers their time anew, and one that waits for work may be silent for ever", async () => {
  const silent = fake(({ kind }) => kind === "ask")
  const { made } = search(() => silent)
  await vi.advanceTimersByTimeAsync((SILENT_TIMES - 1) * LISTEN_EVERY)
  vi.setSystemTime(Date.now() + 600_000)
  await vi.advanceTimersByTimeAsync((SILENT_TIMES - 1) * LISTEN_EVERY)
  expect(made()).toBe(1)
  await vi.advanceTimersByTimeAsync(4 * LISTEN_EVERY)
  expect(made()).toBe(2)

  const deaths: string[] = []
  const port = spawning(() => fake(() => true))(
    () => {},
    (reason) => deaths.push(reason),
  )
  port.post({ kind: "ask", asked })
  await vi.advanceTimersByTimeAsync(100 * LISTEN_EVERY)
  expect(deaths).toEqual([])
  port.end()
})
