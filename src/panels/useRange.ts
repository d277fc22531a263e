import { type RefObject, useEffect, useLayoutEffect, useRef, useState } from "react"
import { setNumber } from "../commands/numbers"
import { problemText } from "../describe/problemText"
import { useBench } from "../state/useBench"
import { slotIn, slotWords } from "./useSlot"

const VALUE_KEYS = new Set(["ArrowUp", "ArrowDown", "ArrowLeft", "ArrowRight", "PageUp", "PageDown", "Home", "End"])

/**
 * Ties a native range input to one number of the scene. A drag or a held key is one undo step, Escape takes it back.
 * The input keeps its own value while it is moved: set from the store each time, it would lag a frame behind the hand
 * and lose fast key presses.
 */
export function useRange(
  key: string,
  value: number,
): { ref: RefObject<HTMLInputElement | null>; problem: string | null } {
  const bench = useBench()
  const ref = useRef<HTMLInputElement>(null)
  const [problem, setProblem] = useState<string | null>(null)

  useLayoutEffect(() => {
    if (ref.current !== null) ref.current.value = String(value)
  }, [value])

  useEffect(() => {
    const input = ref.current
    if (input === null) return
    let open = false
    let givenUp = false
    let byKey = false

    const present = () => slotIn(bench.store.getState().scene, key)
    const restore = () => {
      const slot = present()
      if (slot !== undefined) input.value = String(slot.value)
    }
    const begin = () => {
      const slot = present()
      if (open || slot === undefined) return
      open = true
      givenUp = false
      setProblem(null)
      bench.begin(slotWords(bench.store.getState().scene, slot))
    }
    const end = () => {
      givenUp = false
      if (!open) return
      open = false
      bench.commit()
      restore()
    }
    const onKeyDown = (event: KeyboardEvent) => {
      if (VALUE_KEYS.has(event.key)) {
        byKey = true
        begin()
      } else if (event.key === "Escape" && open) {
        event.preventDefault()
        event.stopPropagation()
        open = false
        givenUp = true
        bench.cancel()
        restore()
      }
    }
    const onKeyUp = () => {
      byKey = false
      end()
    }
    const onInput = () => {
      if (givenUp) return restore()
      const result = setNumber.run(bench, { key, value: input.valueAsNumber })
      setProblem(result.ok ? null : problemText(bench.store.getState().scene, result.errors))
      if (!result.ok) restore()
    }
    // Under a key `change` comes with every press; only letting go ends the run then.
    const onChange = () => {
      if (!byKey) end()
    }
    const onPointerDown = () => begin()
    const listeners = [
      ["pointerdown", onPointerDown],
      ["pointerup", end],
      ["pointercancel", end],
      ["keydown", onKeyDown],
      ["keyup", onKeyUp],
      ["blur", onKeyUp],
      ["input", onInput],
      ["change", onChange],
    ] as const
    for (const [name, listener] of listeners) input.addEventListener(name, listener as EventListener)
    return () => {
      for (const [name, listener] of listeners) input.removeEventListener(name, listener as EventListener)
      end()
    }
  }, [bench, key])

  return { ref, problem }
}
