import { useSyncExternalStore } from "react"
import type { StoreApi } from "zustand/vanilla"

/** A value of a store beside the bench's; select numbers, texts or parts of its state, not fresh objects. */
export const useStore = <S, T>(store: StoreApi<S>, select: (state: S) => T): T =>
  useSyncExternalStore(store.subscribe, () => select(store.getState()))
