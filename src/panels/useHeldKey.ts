import { useEffect, useMemo, useRef } from "react"
import type { Bench } from "../state/bench"

/** A run of changes from one held key: begun by its first, one undo step when it is let go. */
export interface HeldKey {
  readonly open: boolean
  begin(label: string): void
  /** Ends the run; true when there was one. */
  end(): boolean
  /** Gives the run up; true when there was one. */
  cancel(): boolean
}

export function useHeldKey(bench: Bench): HeldKey {
  const open = useRef(false)
  const held = useMemo<HeldKey>(() => {
    const close = (how: () => void) => {
      if (!open.current) return false
      open.current = false
      how()
      return true
    }
    return {
      get open() {
        return open.current
      },
      begin(label) {
        if (open.current) return
        open.current = true
        bench.begin(label)
      },
      end: () => close(() => bench.commit()),
      cancel: () => close(() => bench.cancel()),
    }
  }, [bench])
  // A field that goes away under a held key keeps what was done.
  useEffect(() => () => void held.end(), [held])
  return held
}
