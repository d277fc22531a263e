import { useId, useLayoutEffect, useRef } from "react"
import type { Result } from "../scene/errors"
import "./choice.css"

interface Props<T extends string> {
  readonly name: string
  readonly value: T
  /** Value and word of each, in order. */
  readonly options: readonly (readonly [T, string])[]
  /** Refused, the choice goes back. */
  onChoose(value: T): Result<void>
}

/**
 * One of a few, all in view: radio buttons drawn as a row of pieces. A press shows at once, while the state of the bench
 * reaches the page only with the next frame.
 */
export function Choice<T extends string>({ name, value, options, onChoose }: Props<T>) {
  const id = useId()
  const row = useRef<HTMLDivElement>(null)
  const showValue = () => {
    for (const input of row.current?.querySelectorAll("input") ?? []) input.checked = input.value === value
  }
  useLayoutEffect(showValue, [value])
  return (
    <fieldset className="choice">
      <legend>{name}</legend>
      <div className="choice-row" ref={row}>
        {options.map(([option, word]) => (
          <label key={option} className="choice-option">
            <input
              type="radio"
              name={id}
              value={option}
              defaultChecked={option === value}
              onChange={() => {
                if (!onChoose(option).ok) showValue()
              }}
            />
            <span>{word}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
