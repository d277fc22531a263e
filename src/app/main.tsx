import { createRoot } from "react-dom/client"
import { browserStore } from "../files/browserStore"
import { arrivingFileRules } from "../files/fileRules"
import { keepSafe } from "../files/keepSafe"
import { createFrameStore, soon } from "../state/frame"
import { BenchContext } from "../state/useBench"
import { App } from "./App"
import { ErrorScreen } from "./ErrorScreen"
import { listenForShortcuts } from "./shortcuts"
import { sceneAsked, startBench } from "./start"
import "./theme.css"
import { followTheme } from "./theme"

const storage = browserStore()
const { rules, fetch: fetchRules } = arrivingFileRules()
const bench = await startBench(storage, location.search, rules)
followTheme(bench.store)
keepSafe(bench, storage, () => sceneAsked(location.search))
listenForShortcuts(bench)

const access = { bench, frames: createFrameStore(bench.store, soon) }
const host = document.getElementById("root")
if (host === null) throw new Error("the page has no place for the bench")
createRoot(host).render(
  <BenchContext value={access}>
    <ErrorScreen bench={bench}>
      <App />
    </ErrorScreen>
  </BenchContext>,
)

// The validator comes once the first view stands, or at the latest with whatever needs it.
const ready = new MutationObserver(() => {
  if (document.documentElement.dataset.ready !== "true") return
  ready.disconnect()
  void fetchRules()
})
ready.observe(document.documentElement, { attributeFilter: ["data-ready"] })
