import type { Bench } from "../state/bench"
import { files } from "../words/files"
import { linkIn } from "./links"

/** Takes the setup out of the address once it is on the bench, so that a reload goes on with the work instead. */
const clearAddress = () => history.replaceState(history.state, "", location.pathname + location.search)

/** Opens the setup of a link that is followed or pasted while the page is open. */
export function followLinks(bench: Bench): void {
  if (linkIn(location.hash) !== null) clearAddress()
  window.addEventListener("hashchange", async () => {
    const link = linkIn(location.hash)
    if (link === null) return
    clearAddress()
    const reader = await import("../takeaway/link/openLink").catch(() => null)
    if (reader !== null) reader.openLink(bench, link)
    else bench.setView({ notice: AWAY })
  })
}

const AWAY = { tone: "problem", text: files.linkNotOpened, errors: [] } as const
