import type { KeyboardEventHandler } from "react"
import { fieldUnit } from "../describe/fieldText"
import type { UnitChoice } from "../describe/format"
import type { NumberField } from "../scene/fields"
import "./fields.css"

interface Props {
  readonly id: string
  readonly label: string
  readonly field: NumberField
  readonly units: UnitChoice
  readonly text: string
  /** Why the text is no number for this field. */
  readonly problem: string | null
  /** The id of words elsewhere that say why the value cannot stand beside others. */
  readonly wrongBecause?: string | undefined
  /** The draft's own name for the number, where it belongs to one. */
  readonly draft?: string
  onType(text: string): void
  onLeave(): void
  readonly onKeyDown?: KeyboardEventHandler
}

/** A number as a text field with its unit, and under it why it cannot be taken; what becomes of the text is its user's. */
export function NumberBox({ id, label, field, units, text, problem, wrongBecause, draft, ...on }: Props) {
  const invalid = problem !== null || wrongBecause !== undefined
  return (
    <div className="number-field" data-invalid={invalid || undefined}>
      <label htmlFor={id}>{label}</label>
      <span className="number-field-box">
        <input
          id={id}
          type="text"
          inputMode={field.min < 0 ? "text" : "decimal"}
          autoComplete="off"
          data-draft={draft}
          value={text}
          aria-invalid={invalid || undefined}
          aria-describedby={problem === null ? wrongBecause : `${id}-problem`}
          onChange={(event) => on.onType(event.target.value)}
          onKeyDown={on.onKeyDown}
          onBlur={on.onLeave}
          onFocus={(event) => event.target.select()}
        />
        <span className="number-field-unit">{fieldUnit(field.quantity, units).unit}</span>
      </span>
      {problem !== null && (
        <span className="number-field-problem" id={`${id}-problem`} role="alert">
          {problem}
        </span>
      )}
    </div>
  )
}
