import { useCallback, useEffect, useState } from "react"

/**
 * Whether the view for a projector is on. It takes the whole screen where the browser lets it; leaving the whole screen
 * by the browser's own key ends it too. `atOnce`: it is on from the start.
 */
export function useBigScreen(atOnce: boolean): [boolean, (big: boolean) => void] {
  const [big, setBig] = useState(false)
  const set = useCallback((wanted: boolean) => {
    setBig(wanted)
    const page = document.documentElement
    // A refusal leaves the view as large as the window, which is what was asked for anyway.
    if (wanted) void page.requestFullscreen?.().catch(() => undefined)
    else if (document.fullscreenElement !== null) void document.exitFullscreen().catch(() => undefined)
  }, [])
  useEffect(() => {
    if (atOnce) set(true)
  }, [atOnce, set])
  useEffect(() => {
    const changed = () => {
      if (document.fullscreenElement === null) setBig(false)
    }
    document.addEventListener("fullscreenchange", changed)
    return () => {
      document.removeEventListener("fullscreenchange", changed)
      if (document.fullscreenElement !== null) void document.exitFullscreen().catch(() => undefined)
    }
  }, [])
  return [big, set]
}
