import { useId } from "react"
import "./choice.css"

interface Props<T extends string> {
  readonly name: string
  readonly value: T
  /** Value and word of each, in order. */
  readonly options: readonly (readonly [T, string])[]
  onChoose(value: T): void
}

/** One of a few, all in view: radio buttons drawn as a row of pieces. */
export function Choice<T extends string>({ name, value, options, onChoose }: Props<T>) {
  const id = useId()
  return (
    <fieldset className="choice">
      <legend>{name}</legend>
      <div className="choice-row">
        {options.map(([option, word]) => (
          <label key={option} className="choice-option">
            <input type="radio" name={id} checked={option === value} onChange={() => onChoose(option)} />
            <span>{word}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
