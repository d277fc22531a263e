import type { Bench } from "../state/bench"
import { notices } from "../words/notices"
import { writeAutosave, writeCompared, writeSetAside } from "./autosaveWrite"
import type { BrowserStore } from "./browserStore"
import { writePreferences } from "./preferences"

/** Long enough not to write at every step of a drag, short enough that a crash costs next to nothing. */
const QUIET_MS = 400

/** The browser's copy is written anew when one of them changes. */
const WATCHED = ["scene", "savedScene", "fileName", "setAside", "compared"] as const

export interface Keeping {
  /** Writes all of it now. False where the browser does not keep it. */
  keep(): boolean
  stop(): void
}

/**
 * Writes the scene, what was set aside for it and the preferences to the browser soon after they change, and at once
 * when the page is hidden or left. What was set aside is written before the scene that takes its place in the autosave:
 * if the browser takes the one and not the other, the older work stays. If the browser refuses, says so once.
 */
export function keepSafe(bench: Bench, store: BrowserStore, source: () => string | null): Keeping {
  let seen = bench.store.getState()
  let asideKept = seen.setAside.length === 0 || writeSetAside(store, seen.setAside)
  let comparedAsKept = seen.compared
  let timer: ReturnType<typeof setTimeout> | undefined
  let refused = false

  const write = (): boolean => {
    clearTimeout(timer)
    timer = undefined
    const state = bench.store.getState()
    asideKept ||= writeSetAside(store, state.setAside)
    const comparedKept = state.compared === comparedAsKept || writeCompared(store, state.compared)
    if (comparedKept) comparedAsKept = state.compared
    const kept = comparedKept && asideKept && writeAutosave(store, state, source(), Date.now())
    if (kept || refused) return kept
    refused = true
    bench.setView({
      notice: { tone: "problem", text: notices.notKept, errors: [] },
    })
    return false
  }
  const unsubscribe = bench.store.subscribe((state) => {
    if (state.preferences !== seen.preferences) writePreferences(store, state.preferences)
    if (state.setAside !== seen.setAside) asideKept = false
    if (WATCHED.some((key) => state[key] !== seen[key])) {
      clearTimeout(timer)
      timer = setTimeout(write, QUIET_MS)
    }
    seen = state
  })
  const leave = () => {
    if (timer !== undefined) write()
  }
  const hide = () => {
    if (document.visibilityState === "hidden") leave()
  }
  window.addEventListener("pagehide", leave)
  document.addEventListener("visibilitychange", hide)
  return {
    keep: () => write() && writePreferences(store, bench.store.getState().preferences),
    stop() {
      unsubscribe()
      clearTimeout(timer)
      window.removeEventListener("pagehide", leave)
      document.removeEventListener("visibilitychange", hide)
    },
  }
}
