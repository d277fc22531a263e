import { createRoot } from "react-dom/client"
import { browserStore } from "../files/browserStore"
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
const bench = await startBench(storage, location.search)
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
