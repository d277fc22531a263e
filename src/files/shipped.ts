import { failure, type Result } from "../scene/errors"
import type { Scene } from "../scene/schema"
import { files } from "../words/files"
import { shipped } from "../words/shipped"

const words = files.scene

export interface ShippedScene {
  /** File name in `scenes/`, without `.json`: what `?scene=` takes. */
  readonly id: string
  readonly name: string
}

/** The scenes that come with the page. Rejects when they cannot be fetched. */
export const shippedScenes = (): Promise<readonly ShippedScene[]> => listed("scenes")

/**
 * What the list of a folder beside the page names, as this language calls it; a file that the catalogue does not know
 * by its own name. Rejects, with the folder, when it cannot be fetched.
 */
export async function listed(folder: keyof typeof shipped): Promise<readonly ShippedScene[]> {
  const names: Readonly<Record<string, string>> = shipped[folder]
  const response = await fetch(`${folder}/index.json`)
  if (!response.ok) throw new Error(`the list of ${folder} did not come (${response.status})`)
  return ((await response.json()) as { file: string; name: string }[]).map(({ file, name }) => {
    const id = file.replace(/\.json$/, "")
    return { id, name: names[id] ?? name }
  })
}

/** One shipped scene by its name in `scenes/`. Never rejects: what goes wrong is an error with the name in it. */
export async function fetchShipped(id: string): Promise<Result<Scene>> {
  const name = id.replace(/\.json$/, "")
  const missing = (why: (id: string) => string) => failure({ code: "not-a-scene" as const, path: "", message: why(id) })
  if (!/^[\w-]+$/.test(name)) return missing(words.noName)
  try {
    const response = await fetch(`scenes/${name}.json`)
    if (!response.ok) return missing(words.unknown)
    const { parseScene } = await import("../scene/parse")
    return parseScene(await response.text())
  } catch {
    return missing(words.away)
  }
}
