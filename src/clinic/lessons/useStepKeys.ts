import { useEffect } from "react"
import type { Player } from "./player"

/** Things that use the arrow keys themselves. */
const OWN_ARROWS = "input, textarea, select, [role=slider], [role=application]"

/** What a key press asks of a lesson, when nothing else on the page wants it. */
type Asked = "forward" | "back" | "undo" | "redo" | "nothing"

/**
 * Page up and down step whatever has the focus, since that is what a presenter's clicker sends; the arrows only where
 * they would do nothing else. The bench below has shortcuts of its own, which must not reach it: undo and redo are the
 * lesson's, and there is nothing to save or open.
 */
export function askedBy(event: KeyboardEvent): Asked | null {
  const { key, target } = event
  if (event.ctrlKey || event.metaKey) {
    if (key.toLowerCase() === "z") return event.shiftKey ? "redo" : "undo"
    if (key.toLowerCase() === "y") return "redo"
    return ["s", "o"].includes(key.toLowerCase()) ? "nothing" : null
  }
  if (event.altKey) return null
  if (key === "PageDown") return "forward"
  if (key === "PageUp") return "back"
  if (target instanceof Element && target.closest(OWN_ARROWS) !== null) return null
  if (key === "ArrowRight") return "forward"
  return key === "ArrowLeft" ? "back" : null
}

/** Listens for as long as the lesson is shown. Escape leaves unless something under the focus had a use for it. */
export function useStepKeys({ bench, forward, back }: Player, leave: () => void): void {
  useEffect(() => {
    const acts: Readonly<Record<Asked, () => void>> = {
      forward,
      back,
      undo: bench.undo,
      redo: bench.redo,
      nothing: () => undefined,
    }
    const listen = (event: KeyboardEvent) => {
      const asked = askedBy(event)
      if (asked === null) return
      event.preventDefault()
      event.stopPropagation()
      if (!event.repeat || asked === "undo" || asked === "redo") acts[asked]()
    }
    const onEscape = (event: KeyboardEvent) => {
      if (event.key !== "Escape" || event.defaultPrevented) return
      event.preventDefault()
      leave()
    }
    window.addEventListener("keydown", listen, { capture: true })
    window.addEventListener("keydown", onEscape)
    return () => {
      window.removeEventListener("keydown", listen, { capture: true })
      window.removeEventListener("keydown", onEscape)
    }
  }, [bench, forward, back, leave])
}
