import { failure, type Result } from "../scene/errors"
import type { Scene } from "../scene/schema"

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
