import { spawn } from "node:child_process"
import { readFileSync } from "node:fs"
import { join } from "node:path"
import { type Browser, chromium, type Page } from "@playwright/test"
import { setNumber } from "../../src/commands/numbers"
import { parseScene } from "../../src/scene/parse"
import { createBench } from "../../src/state/bench"
import type { Ratio } from "../tools/bench"
import { findBrowser } from "../tools/find-browser"

const root = join(import.meta.dirname, "../..")
const PORT = "5197"
const CORE_BUDGET_MS = 0.2
const SCRIPT_BUDGET_MS = 3
/** What the slope plot's refresh may add to a frame of a drag while the Hills sheet is open, ms. */
const SLOPES_BUDGET_MS = 4
const STEPS = 60
const WARM_UP = 150

/** One drag step in the engine, and whole drags in the built page: script a frame, React commits a frame. */
export async function run(): Promise<Ratio[]> {
  const core = coreStep()
  const { balance, hills } = await pageDrags()
  const { scriptMs, commits, frames } = balance
  const slopes = hills.scriptMs - scriptMs
  return [
    {
      what: "drag step, command to all numbers, limbs unchanged",
      ratio: core / CORE_BUDGET_MS,
      against: "its budget",
      detail: `${core.toFixed(3)} ms median to ${CORE_BUDGET_MS} ms`,
    },
    {
      what: "drag in the page, main-thread script a frame",
      ratio: scriptMs / SCRIPT_BUDGET_MS,
      against: "its budget",
      detail: `${scriptMs.toFixed(2)} ms of its processor time, median of ${frames} frames, to ${SCRIPT_BUDGET_MS} ms`,
    },
    {
      what: "drag in the page, React commits",
      ratio: commits / frames,
      against: "frames drawn",
      detail: `${commits} commits in ${frames} frames`,
    },
    {
      what: "the same drag with Hills open, what its sheet adds a frame",
      ratio: slopes / SLOPES_BUDGET_MS,
      against: "its budget",
      detail: `${hills.scriptMs.toFixed(2)} less ${scriptMs.toFixed(2)} ms, to ${SLOPES_BUDGET_MS} ms`,
    },
  ]
}

function coreStep(): number {
  const read = parseScene(readFileSync(join(root, "scenes/target-recurve-straight-bar.json"), "utf8"))
  if (!read.ok) throw new Error("the shipped scene does not read")
  const bench = createBench(read.value)
  bench.begin("drag")
  const times: number[] = []
  for (let step = 0; step < 4000; step++) {
    const before = performance.now()
    setNumber.run(bench, { key: "front/rod:lengthMm", value: 600 + (step % 200) })
    times.push(performance.now() - before)
  }
  return median(times.slice(2000))
}

/** The drag with the Balance sheet beside the picture, then with the Hills sheet, whose plot follows every step. */
async function pageDrags(): Promise<Record<"balance" | "hills", Dragged>> {
  const server = spawn("node", ["--import", "tsx", "tests/tools/start.ts", "--port", PORT, "--strict-port"], {
    cwd: root,
    stdio: "ignore",
  })
  let browser: Browser | undefined
  try {
    await answering(`http://localhost:${PORT}/`)
    browser = await chromium.launch({ executablePath: findBrowser(), args: ["--no-sandbox"] })
    const page = await browser.newPage({ viewport: { width: 1280, height: 720 } })
    await page.addInitScript({ content: countCommits })
    await page.goto(`http://localhost:${PORT}/?scene=target-recurve-straight-bar`)
    await page.waitForFunction(() => document.documentElement.dataset.ready === "true")
    await page.waitForTimeout(1000)
    const balance = await dragged(browser, page)
    await page.getByRole("button", { name: "Undo", exact: true }).click()
    await page.getByRole("tab", { name: "Hills", exact: true }).click()
    await page.locator(".hills-sheet canvas").first().waitFor()
    await page.waitForTimeout(1000)
    return { balance, hills: await dragged(browser, page) }
  } finally {
    await browser?.close()
    server.kill()
  }
}

interface Dragged {
  readonly scriptMs: number
  readonly commits: number
  readonly frames: number
}

async function dragged(browser: Browser, page: Page): Promise<Dragged> {
  const box = await page.locator('[data-handle="front/rod:lengthMm"]').boundingBox()
  if (box === null) throw new Error("the front rod has no handle in the picture")
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  const mouse = await pointer(page)
  await mouse("mousePressed", x, y)
  // The first frames still compile; a coach drags for longer than that.
  for (let step = 0; step < WARM_UP; step++) await mouse("mouseMoved", x - 10 - (step % STEPS), y)
  const before = await page.evaluate(() => (window as unknown as { commits: number }).commits)
  await browser.startTracing(page, { categories: ["devtools.timeline"] })
  for (let step = 0; step < STEPS; step++) await mouse("mouseMoved", x - 10 - step * 2, y)
  const trace = JSON.parse((await browser.stopTracing()).toString()) as { traceEvents: TraceEvent[] }
  const after = await page.evaluate(() => (window as unknown as { commits: number }).commits)
  await mouse("mouseReleased", x, y)
  const scripts = scriptPerFrame(trace.traceEvents)
  return { scriptMs: median(scripts), commits: after - before, frames: STEPS }
}

/**
 * Pointer events as the browser gets them from a mouse, each with the frame it causes. The test driver's own mouse runs
 * listeners in the page at every move.
 */
async function pointer(page: Page) {
  const browser = await page.context().newCDPSession(page)
  return async (type: "mouseMoved" | "mousePressed" | "mouseReleased", x: number, y: number) => {
    const clickCount = type === "mouseMoved" ? 0 : 1
    await browser.send("Input.dispatchMouseEvent", { type, x, y, button: "left", buttons: 1, clickCount })
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => done(null))))
  }
}

/** React tells this hook of every commit, in production too. As text: what compiles this file adds helpers of its own. */
const countCommits = `
  window.commits = 0
  window.__REACT_DEVTOOLS_GLOBAL_HOOK__ = {
    supportsFiber: true,
    inject: () => 1,
    onCommitFiberRoot: () => { window.commits++ },
    onCommitFiberUnmount() {},
    onPostCommitFiberRoot() {},
  }
`

interface TraceEvent {
  readonly name: string
  readonly ph: string
  readonly tid: number
  readonly ts: number
  readonly dur?: number
  /** Time the thread was running, µs: without what others on the machine took from it meanwhile. */
  readonly tdur?: number
  readonly args?: { readonly data?: { readonly type?: string; readonly url?: string } }
}

/**
 * Script on the page's main thread between one pointer move and the next, ms: moves, timers, frames, microtasks, as far
 * as they call the page's own files and not the waiting of this bench. It is the thread's own processor time: software
 * drawing keeps every core busy, and what it takes is not script.
 */
function scriptPerFrame(events: readonly TraceEvent[]): number[] {
  const moves = events.filter(({ name, args }) => name === "EventDispatch" && args?.data?.type === "pointermove")
  const thread = moves[0]?.tid
  const inOrder = events.filter(({ ph, tid }) => ph === "X" && tid === thread).sort((a, b) => a.ts - b.ts)
  const calls = inOrder.filter(({ name, args }) => name === "FunctionCall" && args?.data?.url?.startsWith("http"))
  const script = outermost(inOrder.filter(({ name }) => SCRIPT.has(name))).filter(({ ts, dur = 0 }) =>
    calls.some((call) => call.ts >= ts && call.ts < ts + dur),
  )
  const starts = moves.map(({ ts }) => ts).sort((a, b) => a - b)
  return starts.slice(0, -1).map((start, index) => {
    const own = script.filter(({ ts }) => ts >= start && ts < starts[index + 1]!)
    return own.reduce((sum, { tdur = Number.NaN }) => sum + tdur, 0) / 1000
  })
}

/** Without what runs within another, whose time has it already. */
function outermost(inOrder: readonly TraceEvent[]): TraceEvent[] {
  let end = Number.NEGATIVE_INFINITY
  return inOrder.filter(({ ts, dur = 0 }) => {
    if (ts < end) return false
    end = ts + dur
    return true
  })
}

const SCRIPT = new Set(["EventDispatch", "FireAnimationFrame", "TimerFire", "RunMicrotasks"])

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN

async function answering(address: string): Promise<void> {
  for (let attempt = 0; attempt < 240; attempt++) {
    try {
      if ((await fetch(address)).ok) return
    } catch {
      // Not up yet.
    }
    await new Promise((wait) => setTimeout(wait, 250))
  }
  throw new Error(`nothing answers at ${address}`)
}
