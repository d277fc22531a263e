import { type BenchState, hasUnsavedChanges } from "../state/bench"
import { sameValue } from "../state/same"
import type { OtherSetup } from "../state/compared"
import type { KeptWork } from "../state/setAside"
import type { BrowserStore } from "./browserStore"

export const AUTOSAVE_KEY = "autosave"
export const SET_ASIDE_KEY = "set-aside"
export const COMPARED_KEY = "compared"

/** Whether there is something to read back; the reader, with the file's validator, is fetched only then. */
export const hasAutosave = (store: BrowserStore): boolean =>
  [AUTOSAVE_KEY, SET_ASIDE_KEY, COMPARED_KEY].some((key) => store.read(key) !== null)

/** False when the browser did not take it. */
export function writeAutosave(store: BrowserStore, state: BenchState, source: string | null, at: number): boolean {
  const { scene, fileName } = state
  const record = { ...recordOf({ scene, fileName, at }), unsaved: hasUnsavedChanges(state), source }
  return store.write(AUTOSAVE_KEY, JSON.stringify(record))
}

/** False when the browser did not take it. */
export const writeSetAside = (store: BrowserStore, list: readonly KeptWork[]): boolean =>
  store.write(SET_ASIDE_KEY, JSON.stringify(list.map(recordOf)))

/** Keeps the setup held to compare. False when the browser did not take it. */
export const writeCompared = (store: BrowserStore, compared: OtherSetup | null): boolean =>
  store.write(
    COMPARED_KEY,
    JSON.stringify(compared === null ? null : { name: compared.name, text: JSON.stringify(compared.scene) }),
  )

/**
 * Lays the last autosave aside as it stands, unread, if it differs from its file: for a start without the reader, so
 * that the next autosave does not take its place. What is no record of work is left where it is.
 */
export function layAutosaveAside(store: BrowserStore): void {
  try {
    const record: unknown = JSON.parse(store.read(AUTOSAVE_KEY) ?? "null")
    const list: unknown = JSON.parse(store.read(SET_ASIDE_KEY) ?? "[]")
    if (record === null || typeof record !== "object" || !("unsaved" in record) || record.unsaved !== true) return
    const laid = Array.isArray(list) && !list.some((other) => sameValue(other, record))
    if (laid) store.write(SET_ASIDE_KEY, JSON.stringify([record, ...list]))
  } catch {
    // Not JSON: the reader could make nothing of it either.
  }
}

/** The scene as the text of a file, so that an older or a newer bench can tell whether it can read it. */
const recordOf = ({ scene, fileName, at }: KeptWork) => ({ text: JSON.stringify(scene), fileName, at })
