import { createContext, useContext, useSyncExternalStore } from "react"
import type { Bench, BenchState } from "./bench"
import type { FrameStore, Seldom } from "./frame"
import type { Preferences } from "./preferences"

export interface BenchAccess {
  readonly bench: Bench
  readonly frames: FrameStore
}

export const BenchContext = createContext<BenchAccess | null>(null)

/** The bench, for running commands. Never causes a render. */
export function useBench(): Bench {
  return useAccess().bench
}

/**
 * A value of the state, kept up to date once a frame. The component renders again only when the selected value is
 * another one (Object.is), so select numbers, strings or parts of the state, not fresh objects.
 */
export function useLive<T>(select: (state: BenchState) => T): T {
  const { frames } = useAccess()
  return useSyncExternalStore(frames.subscribe, () => select(frames.latest()))
}

/** The same for what a drag never changes, which then costs it nothing: dozens of numbers ask for their units. */
export function useSeldom<T>(select: (state: Seldom) => T): T {
  const { frames } = useAccess()
  return useSyncExternalStore(frames.subscribeSeldom, () => select(frames.latest()))
}

/** The units and what else the coach has chosen for the page. */
export const usePreferences = (): Preferences => useSeldom(({ preferences }) => preferences)

function useAccess(): BenchAccess {
  const access = useContext(BenchContext)
  if (access === null) throw new Error("no bench around this component")
  return access
}
