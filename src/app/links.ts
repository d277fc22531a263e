import type { Result } from "../scene/errors"
import { failure } from "../scene/errors"
import type { Scene } from "../scene/schema"
import type { Bench } from "../state/bench"

/** The setup that is held in the page's address, still packed; see takeaway/link. */
export const linkIn = (hash: string): string | null => (hash.startsWith("#setup=") ? hash : null)

/** The setup of a link. Never rejects. */
export async function fetchLinked(link: string): Promise<Result<Scene>> {
  try {
    return (await import("../takeaway/link/link")).readLink(link)
  } catch {
    const message = "the part of the page that reads links could not be fetched; is the network there?"
    return failure({ code: "not-a-scene", path: "", message })
  }
}

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

const AWAY = {
  tone: "problem",
  text: "The setup in the link was not opened: the part of the page that reads links could not be fetched. Is the network there?",
  errors: [],
} as const
