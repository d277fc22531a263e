import type { Result } from "../scene/errors"
import { failure } from "../scene/errors"
import { type Kit, kitFromTable, parseKit } from "../scene/kit"

/** Whether a text is meant as a kit and not as a scene: by its ending, or by what it says it is. */
export const looksLikeKit = (name: string, text: string): boolean =>
  /\.(csv|tsv)$/i.test(name) || /"format"\s*:\s*"bow-balance-bench-kit"/.test(text)

/** A kit from a file's name and text: a table by its ending, else JSON. */
export const kitFrom = (name: string, text: string): Result<Kit> =>
  /\.(csv|tsv|txt)$/i.test(name) ? kitFromTable(text, name.replace(/\.\w+$/, "")) : parseKit(text)

export interface ShippedKit {
  /** File name in `scenes/kits/`, without `.json`. */
  readonly id: string
  readonly name: string
}

/** The kits that come with the page. Rejects when they cannot be fetched. */
export async function shippedKits(): Promise<readonly ShippedKit[]> {
  const response = await fetch("scenes/kits/index.json")
  if (!response.ok) throw new Error(`the list of kits did not come (${response.status})`)
  return ((await response.json()) as { file: string; name: string }[]).map(({ file, name }) => ({
    id: file.replace(/\.json$/, ""),
    name,
  }))
}

/** One shipped kit by its name in `scenes/kits/`. Never rejects. */
export async function fetchKit(id: string): Promise<Result<Kit>> {
  try {
    const response = await fetch(`scenes/kits/${id}.json`)
    if (response.ok) return parseKit(await response.text())
  } catch {
    // Said below, like any other way of not coming.
  }
  return failure({ code: "not-a-scene", path: "", message: `kit "${id}" could not be fetched; is the network there?` })
}
