import { type RefObject, useEffect, useMemo, useState } from "react"
import type { Bench } from "../../state/bench"
import { type SliderGesture, sliderGesture } from "./gesture"

/**
 * The gesture of all panels in `host`; leva says when a box is visited but not when a slider is pressed, so presses are
 * heard here, as is Escape. `round` counts up when the panels have to be given the bench's numbers anew.
 */
export function useSliderGesture(bench: Bench, host: RefObject<HTMLElement | null>) {
  const [round, setRound] = useState(0)
  const gesture = useMemo(() => sliderGesture(bench, () => setRound((before) => before + 1)), [bench])
  useEffect(() => {
    const panels = host.current
    return panels === null ? undefined : listen(panels, gesture)
  }, [gesture, host])
  return { gesture, round }
}

function listen(panels: HTMLElement, gesture: SliderGesture): () => void {
  const press = ({ target }: PointerEvent) => {
    // A press into a box is a visit, and one on a heading folds what is below it.
    if (target instanceof HTMLInputElement || (target instanceof Element && target.closest("summary"))) return
    gesture.start("press")
  }
  const release = () => gesture.end("press")
  let textBefore = ""
  const enter = ({ target }: FocusEvent) => {
    if (target instanceof HTMLInputElement) textBefore = target.value
  }
  const key = (event: KeyboardEvent) => {
    const given = event.key === "Escape" ? gesture.giveUp() : null
    if (given === null) return
    event.preventDefault()
    event.stopPropagation()
    const box = document.activeElement
    if (given !== "visit" || !(box instanceof HTMLInputElement)) return
    retype(box, textBefore)
    box.select()
    // The visit goes on, so what is done in it from now on counts.
    gesture.end("visit")
    gesture.start("visit")
  }
  /** leva reads a number up to its comma, as if the rest were not there. */
  const type = ({ target }: Event) => {
    if (!(target instanceof HTMLInputElement) || !target.value.includes(",")) return
    const caret = target.selectionStart
    retype(target, target.value.replaceAll(",", "."))
    target.setSelectionRange(caret, caret)
  }
  panels.addEventListener("focusin", enter)
  panels.addEventListener("input", type, true)
  panels.addEventListener("pointerdown", press, true)
  window.addEventListener("pointerup", release)
  window.addEventListener("pointercancel", release)
  window.addEventListener("keydown", key, true)
  return () => {
    panels.removeEventListener("focusin", enter)
    panels.removeEventListener("input", type, true)
    panels.removeEventListener("pointerdown", press, true)
    window.removeEventListener("pointerup", release)
    window.removeEventListener("pointercancel", release)
    window.removeEventListener("keydown", key, true)
    gesture.end("press")
    gesture.end("visit")
  }
}

/** Types for the coach: React hears of a text only by the event, and keeps to its own unless the native setter is used. */
function retype(box: HTMLInputElement, text: string): void {
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set?.call(box, text)
  box.dispatchEvent(new Event("input", { bubbles: true }))
}
