import { useEffect, useLayoutEffect, useRef } from "react"

/** While `away`, the page below cannot hold the focus; what had it gets it back afterwards. */
export function useFocusBack(away: boolean): void {
  const had = useRef<Element>(null)
  // Before the browser takes the focus off what has become inert.
  useLayoutEffect(() => {
    if (away) had.current = document.activeElement
  }, [away])
  useEffect(() => {
    if (!away) return
    return () => {
      if (had.current instanceof HTMLElement) had.current.focus()
    }
  }, [away])
}
