import type { StoreApi } from "zustand/vanilla"
import type { BenchState } from "./bench"

/**
 * The store as React sees it: listeners are told at most once per animation frame, all in the same task, so that a
 * burst of pointer moves makes one React commit. `latest()` is the state as of the last telling. The picture and the
 * commands read the store itself and are never behind.
 */
export interface FrameStore {
  subscribe(listener: () => void): () => void
  /** For what a drag never changes: told only when preferences, setups to compare or readings are others. */
  subscribeSeldom(listener: () => void): () => void
  latest(): BenchState
}

export function createFrameStore(store: StoreApi<BenchState>, nextFrame: (tell: () => void) => void): FrameStore {
  const listeners = new Set<() => void>()
  const seldom = new Set<() => void>()
  let told = store.getState()
  let waiting = false
  store.subscribe(() => {
    if (waiting) return
    waiting = true
    nextFrame(() => {
      waiting = false
      const before = told
      told = store.getState()
      if (!sameSeldom(before, told)) for (const listener of [...seldom]) listener()
      for (const listener of [...listeners]) listener()
    })
  })
  return {
    subscribe(listener) {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    subscribeSeldom(listener) {
      seldom.add(listener)
      return () => seldom.delete(listener)
    },
    latest: () => told,
  }
}

/** What `subscribeSeldom` is about. */
export type Seldom = Pick<BenchState, "preferences" | "compared" | "peeked"> & {
  readonly scene: Pick<BenchState["scene"], "measurements">
}

const sameSeldom = (a: Seldom, b: Seldom): boolean =>
  a.preferences === b.preferences &&
  a.compared === b.compared &&
  a.peeked === b.peeked &&
  a.scene.measurements === b.scene.measurements

let waiting: (() => void)[] = []

/**
 * Next animation frame, or soon after in a tab that is not being drawn, where frames do not come. All that asked
 * before it are called in turn, in one task.
 */
export function soon(tell: () => void): void {
  waiting.push(tell)
  if (waiting.length > 1) return
  const once = () => {
    cancelAnimationFrame(frame)
    clearTimeout(timer)
    const now = waiting
    waiting = []
    for (const each of now) {
      try {
        each()
      } catch (reason) {
        // One that fails must not keep the others waiting.
        reportError(reason)
      }
    }
  }
  const frame = requestAnimationFrame(once)
  const timer = setTimeout(once, 250)
}
