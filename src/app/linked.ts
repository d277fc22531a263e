import { failure, type Result } from "../scene/errors"
import type { Scene } from "../scene/schema"
import { files } from "../words/files"

/** The setup of a link. Never rejects. */
export async function fetchLinked(link: string): Promise<Result<Scene>> {
  try {
    return (await import("../takeaway/link/link")).readLink(link)
  } catch {
    return failure({ code: "not-a-scene", path: "", message: files.linkReaderAway })
  }
}
