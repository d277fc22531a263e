import { createStore } from "zustand/vanilla"
import { useSyncExternalStore } from "react"
import { type HoldChoice, type Motion, nudgeFields, type NudgeQuestion } from "../../scene/nudge"

/** Distances of targets that are shot, m, with the usual diameter of the face there, cm (common practice, no source). */
export const faces = { "18": 40, "30": 80, "50": 122, "70": 122 } as const
export type Distance = keyof typeof faces

export type Slowness = "1" | "10" | "100"

/** Everything that is asked on the sheet. It outlives the sheet, not the page. */
export interface Asked extends Omit<NudgeQuestion, "kind"> {
  readonly kind: NudgeQuestion["kind"] | "drop"
  readonly motion: Motion
  readonly hold: HoldChoice
  readonly leavesS: number
  readonly distance: Distance
  readonly slowness: Slowness
}

const { impulse, push, lastingS, leavesS } = nudgeFields

const store = createStore<Asked>(() => ({
  kind: "knock",
  motion: "yaw",
  impulse: impulse.fallback!,
  push: push.fallback!,
  lastingS: lastingS.fallback!,
  leavesS: leavesS.fallback!,
  hold: "free",
  distance: "70",
  slowness: "10",
}))

export const useAsked = (): Asked => useSyncExternalStore(store.subscribe, store.getState)

export const ask = (changes: Partial<Asked>): void => store.setState(changes)
