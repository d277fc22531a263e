import { createRoot } from "react-dom/client"
import { browserStore } from "../files/browserStore"
import { arrivingFileRules } from "../files/fileRules"
import { keepSafe } from "../files/keepSafe"
import type { Notice } from "../state/bench"
import { createFrameStore, soon } from "../state/frame"
import { followReadings } from "../state/spreads"
import { BenchContext } from "../state/useBench"
import { language } from "../words/language"
import { notices } from "../words/notices"
import { App } from "./App"
import { ErrorScreen } from "./ErrorScreen"
import { later, onceLater } from "./later"
import { linkIn } from "./links"
import { sceneAsked, startBench } from "./start"
import "./theme.css"
import { followTheme } from "./theme"

/**
 * Not awaited at the top of the module: the chunks fetched on the way import this one and would wait for it while it
 * waits for them.
 */
async function start(host: HTMLElement): Promise<void> {
  const storage = browserStore()
  const { rules, fetch: fetchRules } = arrivingFileRules(() => bench.setView({ notice: RULES_AWAY }))
  const { hash } = location
  const bench = await startBench(storage, location.search, rules, hash)
  document.documentElement.lang = language
  followTheme(bench.store)
  const { keep } = keepSafe(bench, storage, () => sceneAsked(location.search))
  // It is about to be taken out of the address, and stands in no file.
  if (linkIn(hash) !== null) keep()
  onceLater(({ listenForShortcuts, followLinks, followLanguage }) => {
    listenForShortcuts(bench)
    followLinks(bench, hash)
    followLanguage(bench, keep)
  })
  whenReady(fetchRules)
  // Not in development: a kept page would hide every change from it.
  if (import.meta.env.PROD) whenReady(async () => (await later()).keepOffline(bench))
  followReadings(bench, async () => (await import("../scene/measure")).appliedSpreads)
  const access = { bench, frames: createFrameStore(bench.store, soon) }
  createRoot(host).render(
    <BenchContext value={access}>
      <ErrorScreen bench={bench}>
        <App />
      </ErrorScreen>
    </BenchContext>,
  )
}

const RULES_AWAY: Notice = { tone: "problem", text: notices.rulesAway, errors: [] }

/** Runs `then` once the first view stands: what is fetched then does not delay it. */
function whenReady(then: () => Promise<unknown>): void {
  const watch = new MutationObserver(() => {
    if (document.documentElement.dataset.ready !== "true") return
    watch.disconnect()
    // Without a network nothing is lost but what it would have fetched.
    then().catch(() => undefined)
  })
  watch.observe(document.documentElement, { attributeFilter: ["data-ready"] })
}

const host = document.getElementById("root")
if (host === null) throw new Error("the page has no place for the bench")
void start(host)
