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
  /** How long the page stood still during this search, ms; 0 when it did not. */
  readonly slept: number
}

/** Calls `woken` with the ms whenever the page has stood still, until stopped; `alive` says that it does not. */
export type SleepWatch = (woken: (ms: number) => void) => { alive(): void; stop(): void }

const sleepless: SleepWatch = () => ({ alive() {}, stop() {} })

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
  watchSleep: SleepWatch = sleepless,
): Finder {
  const idle = { running: false, asked: null, progress: null, outcome: null, slept: 0 }
  const store = createStore<FinderState>(() => ({ ...idle, question, cutOff }))
  let running: RunningFind | null = null
  let watch: ReturnType<SleepWatch> | null = null
  let started = 0
  return {
    store,
    setQuestion: (next) => store.setState({ question: next }),
    start(asked) {
      running?.cancel()
      watch?.stop()
      const mine = ++started
      store.setState({ running: true, cutOff: false, asked, progress: null, outcome: null, slept: 0 })
      watch = watchSleep((ms) => store.setState(({ slept }) => ({ slept: slept + ms })))
      running = startFind(
        asked,
        workers,
        spawn,
        (progress) => {
          if (mine !== started) return
          watch?.alive()
          store.setState({ progress })
        },
        (outcome) => {
          if (mine !== started) return
          running = null
          watch?.stop()
          store.setState({ running: false, outcome })
        },
      )
    },
    cancel: () => running?.cancel(),
  }
}
