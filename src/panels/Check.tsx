import { type ReactNode, useLayoutEffect, useRef } from "react"
import type { Result } from "../scene/errors"
import "./choice.css"

interface Props {
  readonly checked: boolean
  /** Does what the switch says; refused, the switch goes back. */
  onSwitch(): Result<void>
  readonly children: ReactNode
}

/**
 * A checkbox with its words. It shows a press at once, while the state of the bench reaches the page only with the next
 * frame.
 */
export function Check({ checked, onSwitch, children }: Props) {
  const input = useRef<HTMLInputElement>(null)
  useLayoutEffect(() => {
    if (input.current !== null) input.current.checked = checked
  }, [checked])
  return (
    <label className="check">
      <input
        ref={input}
        type="checkbox"
        defaultChecked={checked}
        onChange={(event) => {
          if (!onSwitch().ok) event.target.checked = checked
        }}
      />
      {children}
    </label>
  )
}
