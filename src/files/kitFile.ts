import type { Result } from "../scene/errors"
import { failure } from "../scene/errors"
import { type Kit, kitFromTable, parseKit } from "../scene/kit"
import { kitFiles as words } from "../words/kitFiles"
import { listed } from "./shipped"

/** Whether a text is meant as a kit and not as a scene: by its ending, or by what it says it is. */
export const looksLikeKit = (name: string, text: string): boolean =>
  /\.(csv|tsv)$/i.test(name) || /"format"\s*:\s*"bow-balance-bench-kit"/.test(text)

/** A kit from a file's name and text: a table by its ending, else JSON. */
export const kitFrom = (name: string, text: string): Result<Kit> =>
  /\.(csv|tsv|txt)$/i.test(name) ? kitFromTable(text, name.replace(/\.\w+$/, "")) : parseKit(text)

/** The kits that come with the page, their `id` a file name in `scenes/kits/`. Rejects when they cannot be fetched. */
export const shippedKits = () => listed("scenes/kits")

/** One shipped kit by its name in `scenes/kits/`. Never rejects. */
export async function fetchKit(id: string): Promise<Result<Kit>> {
  try {
    const response = await fetch(`scenes/kits/${id}.json`)
    if (response.ok) return parseKit(await response.text())
  } catch {
    // Said below, like any other way of not coming.
  }
  return failure({ code: "not-a-scene", path: "", message: words.away(id) })
}
