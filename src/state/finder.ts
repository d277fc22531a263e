import { createStore, type StoreApi } from "zustand/vanilla"
import { type Asked, type FindQuestion, type Outcome, type Progress, type RunningFind, startFind } from "../scene/find"
import type { Spawn } from "../scene/find/pool/pool"

export interface FinderState {
  /** What the coach asks instead of what the bow suggests; null while nothing was changed. */
  readonly question: FindQuestion | null
  /** A search of an earlier visit never came to its end. */
  readonly cutOff: boolean
  readonly running: boolean
  /** What the last search was asked. */
  readonly asked: Asked | null
  readonly progress: Progress | null
  readonly outcome: Outcome | null
}

/** Runs one search at a time, whoever looks on. */
export interface Finder {
  readonly store: StoreApi<FinderState>
  setQuestion(question: FindQuestion | null): void
  /** Starts anew; a search under way is given up. */
  start(asked: Asked): void
  /** Ends the search with the best so far. */
  cancel(): void
}

export function createFinder(
  workers: number,
  spawn: Spawn,
  { question, cutOff }: Pick<FinderState, "question" | "cutOff">,
): Finder {
  const idle = { running: false, asked: null, progress: null, outcome: null }
  const store = createStore<FinderState>(() => ({ ...idle, question, cutOff }))
  let running: RunningFind | null = null
  let started = 0
  return {
    store,
    setQuestion: (next) => store.setState({ question: next }),
    start(asked) {
      running?.cancel()
      const mine = ++started
      store.setState({ running: true, cutOff: false, asked, progress: null, outcome: null })
      running = startFind(
        asked,
        workers,
        spawn,
        (progress) => {
          if (mine === started) store.setState({ progress })
        },
        (outcome) => {
          if (mine !== started) return
          running = null
          store.setState({ running: false, outcome })
        },
      )
    },
    cancel: () => running?.cancel(),
  }
}
