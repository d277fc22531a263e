import type { StoreApi } from "zustand/vanilla"
import type { BenchState } from "./bench"

/**
 * The store as React sees it: listeners are told at most once per animation frame, all in the same task, so that a
 * burst of pointer moves makes one React commit. `latest()` is the state as of the last telling. The picture and the
 * commands read the store itself and are never behind.
 */
export interface FrameStore {
  subscribe(listener: () => void): () => void
  latest(): BenchState
}

export function createFrameStore(store: StoreApi<BenchState>, nextFrame: (tell: () => void) => void): FrameStore {
  const listeners = new Set<() => void>()
  let told = store.getState()
  let waiting = false
  store.subscribe(() => {
    if (waiting) return
    waiting = true
    nextFrame(() => {
      waiting = false
      told = store.getState()
      for (const listener of [...listeners]) listener()
    })
  })
  return {
    subscribe(listener) {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    latest: () => told,
  }
}

/** Next animation frame, or soon after in a tab that is not being drawn, where frames do not come. */
export function soon(tell: () => void): void {
  let done = false
  const once = () => {
    if (done) return
    done = true
    cancelAnimationFrame(frame)
    clearTimeout(timer)
    tell()
  }
  const frame = requestAnimationFrame(once)
  const timer = setTimeout(once, 250)
}
