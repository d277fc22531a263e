import { type RefObject, useLayoutEffect } from "react"

/** By how much the type is made smaller at a time, and where that ends: smaller is no longer read from the back. */
const STEP = 0.04
const LEAST = 0.72

/**
 * Makes the words of a box smaller, by `--fit` for its style sheet, until all of it is seen at once: nobody scrolls on a
 * projector. Whatever comes into the box later, an answer or a longer number, is fitted anew.
 */
export function useFitting(of: RefObject<HTMLElement | null>, wanted: boolean): void {
  useLayoutEffect(() => {
    const box = of.current
    if (box === null || !wanted) return
    const adjust = () => {
      let share = 1
      const put = () => box.style.setProperty("--fit", share.toFixed(2))
      for (put(); box.scrollHeight > box.clientHeight && share - STEP >= LEAST; put()) share -= STEP
    }
    adjust()
    const content = new MutationObserver(adjust)
    content.observe(box, { subtree: true, childList: true, characterData: true })
    const size = new ResizeObserver(adjust)
    size.observe(box)
    return () => {
      content.disconnect()
      size.disconnect()
      box.style.removeProperty("--fit")
    }
  }, [of, wanted])
}
