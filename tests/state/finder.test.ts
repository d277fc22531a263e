import { expect, test } from "vitest"
import { type Order, questionFor, type Report, serveFind } from "../../src/scene/find"
import type { Spawn } from "../../src/scene/find/pool/pool"
import { readKit } from "../../src/scene/kit"
import { createFinder, type Finder } from "../../src/state/finder"
import { kitDocument } from "../scene/kit/kits"
import { fullScene } from "./benches"

const kit = readKit(kitDocument())
if (!kit.ok) throw new Error("the kit is not valid")
const scene = { ...fullScene(), target: {} }
const asked = (mostDiscs: number) => ({
  scene,
  kit: kit.value,
  question: { ...questionFor(scene), mostDiscs, count: 3 },
})

const soon = () => new Promise<void>((resolve) => setTimeout(resolve))
const spawn: Spawn = (onReport) => {
  let alive = true
  const serve = serveFind((report: Report) => setTimeout(() => alive && onReport(report)), soon)
  const end = () => {
    alive = false
  }
  return { post: (order: Order) => void setTimeout(() => alive && serve(order)), end }
}
const ended = (finder: Finder) =>
  new Promise<void>((resolve) => {
    const stop = finder.store.subscribe(({ running }) => {
      if (running) return
      stop()
      resolve()
    })
  })

test("a search runs from question to outcome, and what was asked stays beside it", async () => {
  const finder = createFinder(2, spawn, { question: null, cutOff: true })
  const what = asked(1)
  finder.start(what)
  expect(finder.store.getState()).toMatchObject({ running: true, cutOff: false, outcome: null, asked: what })
  await ended(finder)
  expect(finder.store.getState().outcome).toMatchObject({ kind: "searched", proved: true })
})

test("started anew, the search before is given up and only the new one answers", async () => {
  const finder = createFinder(1, spawn, { question: null, cutOff: true })
  finder.start(asked(3))
  const second = asked(0)
  finder.start(second)
  await ended(finder)
  const { outcome, asked: last } = finder.store.getState()
  expect(last).toBe(second)
  expect(outcome?.kind === "searched" && outcome.proved).toBe(true)
})

test("the page's sleep during a search is added up, and no longer watched once it has ended", async () => {
  let awake: ((ms: number) => void) | null = null
  const finder = createFinder(1, spawn, { question: null, cutOff: false }, (woken) => {
    awake = woken
    return {
      alive() {},
      stop() {
        awake = null
      },
    }
  })
  finder.start(asked(1))
  const wake = awake as ((ms: number) => void) | null
  wake?.(20_000)
  wake?.(30_000)
  expect(finder.store.getState()).toMatchObject({ running: true, slept: 50_000 })
  await ended(finder)
  expect(awake).toBeNull()
  finder.start(asked(0))
  expect(finder.store.getState().slept).toBe(0)
  await ended(finder)
})

test("cancelled, it ends with what it has", async () => {
  const finder = createFinder(1, spawn, { question: null, cutOff: true })
  finder.start(asked(3))
  const end = ended(finder)
  finder.cancel()
  await end
  expect(finder.store.getState().outcome).toMatchObject({ kind: "searched", proved: false, trouble: null })
})
