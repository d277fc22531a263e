import * as z from "zod/mini"
import { parseScene } from "../scene/parse"
import type { Scene } from "../scene/schema"
import { AUTOSAVE_KEY } from "./autosaveWrite"
import type { BrowserStore } from "./browserStore"

/** What was on the bench when it was last seen. */
export interface Autosave {
  readonly scene: Scene
  readonly fileName: string | null
  /** It differs from its file. */
  readonly unsaved: boolean
  /** The shipped scene named in the page's address, if any. */
  readonly source: string | null
  /** Milliseconds since 1970. */
  readonly at: number
}

const record = z.object({
  text: z.string(),
  fileName: z.nullable(z.string()),
  unsaved: z.boolean(),
  source: z.nullable(z.string()),
  at: z.number(),
})

/** The last autosave; null when there is none or it cannot be read (an older bench cannot read a newer scene). */
export function readAutosave(store: BrowserStore): Autosave | null {
  const text = store.read(AUTOSAVE_KEY)
  if (text === null) return null
  try {
    const { text: sceneText, ...rest } = record.parse(JSON.parse(text))
    const scene = parseScene(sceneText)
    return scene.ok ? { ...rest, scene: scene.value } : null
  } catch {
    return null
  }
}

export { writeAutosave } from "./autosaveWrite"
