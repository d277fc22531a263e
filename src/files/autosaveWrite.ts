import { type BenchState, hasUnsavedChanges } from "../state/bench"
import type { BrowserStore } from "./browserStore"

export const AUTOSAVE_KEY = "autosave"

/** Whether there is something to read back; the reader, with the file's validator, is fetched only then. */
export const hasAutosave = (store: BrowserStore): boolean => store.read(AUTOSAVE_KEY) !== null

/** False when the browser did not take it. */
export function writeAutosave(store: BrowserStore, state: BenchState, source: string | null, at: number): boolean {
  const { scene, fileName } = state
  const text = JSON.stringify(scene)
  return store.write(AUTOSAVE_KEY, JSON.stringify({ text, fileName, unsaved: hasUnsavedChanges(state), source, at }))
}
