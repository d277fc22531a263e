import * as z from "zod/mini"
import { parseScene } from "../scene/parse"
import type { OtherSetup } from "../state/compared"
import type { KeptWork } from "../state/setAside"
import { AUTOSAVE_KEY, COMPARED_KEY, SET_ASIDE_KEY } from "./autosaveWrite"
import type { BrowserStore } from "./browserStore"

/** What was on the bench when it was last seen. */
export interface Autosave extends KeptWork {
  /** It differs from its file. */
  readonly unsaved: boolean
  /** The shipped scene named in the page's address, if any. */
  readonly source: string | null
}

const work = { text: z.string(), fileName: z.nullable(z.string()), at: z.number() }
const autosaved = z.object({ ...work, unsaved: z.boolean(), source: z.nullable(z.string()) })
const keptWork = z.object(work)
const otherSetup = z.object({ name: z.string(), text: z.string() })

/** The last autosave; null when there is none or it cannot be read (an older bench cannot read a newer scene). */
export const readAutosave = (store: BrowserStore): Autosave | null =>
  sceneRead(autosaved.safeParse(json(store.read(AUTOSAVE_KEY))))

/** The work that was set aside, the latest first; what cannot be read is left out. */
export function readSetAside(store: BrowserStore): readonly KeptWork[] {
  const list = json(store.read(SET_ASIDE_KEY))
  if (!Array.isArray(list)) return []
  return list.map((entry) => sceneRead(keptWork.safeParse(entry))).filter((entry) => entry !== null)
}

/** The setup that was held to compare; null for none and for one that cannot be read. */
export const readCompared = (store: BrowserStore): OtherSetup | null =>
  sceneRead(otherSetup.safeParse(json(store.read(COMPARED_KEY))))

function json(text: string | null): unknown {
  try {
    return JSON.parse(text ?? "null")
  } catch {
    return null
  }
}

function sceneRead<R extends { text: string }>(record: { success: true; data: R } | { success: false }) {
  if (!record.success) return null
  const { text, ...rest } = record.data
  const scene = parseScene(text)
  return scene.ok ? { ...rest, scene: scene.value } : null
}
