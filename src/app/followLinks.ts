import type { Bench } from "../state/bench"
import { files } from "../words/files"
import { lessonLinkIn, linkIn } from "./links"

const anyLink = () => linkIn(location.hash) ?? lessonLinkIn(location.hash)

/** Takes what is in the address out of it once it is on the page, so that a reload goes on with the work instead. */
const clearAddress = () => history.replaceState(history.state, "", location.pathname + location.search)

/**
 * Opens what is in a link that is followed or pasted while the page is open. `opened` is what stood behind the address's
 * `#` when the page was opened, and was opened with it.
 */
export function followLinks(bench: Bench, opened: string): void {
  const follow = async () => {
    const link = anyLink()
    if (link === null) return
    clearAddress()
    const reader = await import("../takeaway/link/openLink").catch(() => null)
    if (reader !== null) reader.openLink(bench, link)
    else bench.setView({ notice: AWAY })
  }
  window.addEventListener("hashchange", follow)
  if (location.hash !== opened) void follow()
  else if (anyLink() !== null) clearAddress()
}

const AWAY = { tone: "problem", text: files.linkNotOpened, errors: [] } as const
