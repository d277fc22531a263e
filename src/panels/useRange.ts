import { type RefObject, useEffect, useLayoutEffect, useRef, useState } from "react"
import { setNumber } from "../commands/numbers"
import { slotTitle } from "../describe/partNames"
import { slotNamed } from "../scene/slots"
import { useBench } from "../state/useBench"

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
    let openBy: "key" | "pointer" | null = null
    /** After Escape the hand may still be dragging: it moves nothing more until it lets go. */
    let givenUp = false

    const present = () => slotNamed(bench.store.getState().scene, key)
    const restore = () => {
      const slot = present()
      if (slot !== undefined) input.value = String(slot.value)
    }
    const begin = (by: "key" | "pointer") => {
      const slot = present()
      if (openBy !== null || slot === undefined) return
      openBy = by
      setProblem(null)
      bench.begin(slotTitle(bench.store.getState().scene, slot))
    }
    const end = () => {
      if (openBy === null) return
      openBy = null
      bench.commit()
      restore()
    }
    const onPointerDown = () => {
      end()
      givenUp = false
      begin("pointer")
    }
    const onPointerEnd = () => {
      end()
      if (givenUp) restore()
      givenUp = false
    }
    const onKeyDown = (event: KeyboardEvent) => {
      if (VALUE_KEYS.has(event.key)) {
        begin("key")
      } else if (event.key === "Escape" && openBy !== null) {
        event.preventDefault()
        event.stopPropagation()
        givenUp = openBy === "pointer"
        openBy = null
        bench.cancel()
        restore()
      }
    }
    const onKeyUp = () => {
      if (openBy === "key") end()
    }
    const onInput = () => {
      if (givenUp) return restore()
      const result = setNumber.run(bench, { key, value: input.valueAsNumber })
      if (result.ok) return setProblem(null)
      restore()
      // The first view needs no words for a refusal; where they cannot be fetched the error has its own.
      const state = bench.store.getState()
      import("../describe/problemText").then(
        ({ problemText }) => setProblem(problemText(state, result.errors)),
        () => setProblem(result.errors[0]?.message ?? null),
      )
    }
    // Under a key `change` comes with every press; only letting go ends the run then.
    const onChange = () => {
      if (openBy === "pointer") end()
      if (givenUp) restore()
    }
    const listeners = [
      ["pointerdown", onPointerDown],
      ["pointerup", onPointerEnd],
      ["pointercancel", onPointerEnd],
      ["keydown", onKeyDown],
      ["keyup", onKeyUp],
      ["blur", onPointerEnd],
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
