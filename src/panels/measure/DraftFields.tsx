import { useId } from "react"
import { fieldText, fieldUnit, type Reading, readField } from "../../describe/fieldText"
import type { UnitChoice } from "../../describe/format"
import { groupedProblem } from "../../describe/groupedText"
import type { NumberField } from "../../scene/fields"
import { useLive } from "../../state/useBench"
import "../fields.css"
import { changeDraft, type Drafts, useDraft } from "./drafts"

interface Props {
  readonly of: Exclude<keyof Drafts, "sheet">
  /** The draft's own name for it. */
  readonly name: string
  readonly field: NumberField
  readonly label?: string
}

/**
 * A number of a draft as a text field in the chosen units; its usual value where nothing is typed. What cannot be read
 * stays as typed, with the reason.
 */
export function DraftNumber({ of, name, field, label = field.label }: Props) {
  const units = useLive(({ preferences }) => preferences)
  const { values, texts } = useDraft(of)
  const id = useId()
  const text = texts[name]
  const value = values[name] ?? field.fallback
  const reading = text === undefined || text.trim() === "" ? null : readDraft(text, field, units)
  const problem = reading === null || reading.ok ? null : `${reading.problem}.`
  const { [name]: _, ...otherTexts } = texts
  const { [name]: __, ...otherValues } = values
  return (
    <div className="number-field" data-invalid={problem !== null || undefined}>
      <label htmlFor={id}>{label}</label>
      <span className="number-field-box">
        <input
          id={id}
          type="text"
          inputMode={field.min < 0 ? "text" : "decimal"}
          autoComplete="off"
          data-draft={name}
          value={text ?? (value === undefined ? "" : fieldText(value, field.quantity, units))}
          aria-invalid={problem !== null || undefined}
          aria-describedby={problem === null ? undefined : `${id}-problem`}
          onChange={({ target }) => {
            const read = readDraft(target.value, field, units)
            changeDraft(of, {
              texts: { ...texts, [name]: target.value },
              values: read.ok ? { ...values, [name]: read.value } : otherValues,
            })
          }}
          onBlur={() => {
            if (problem === null && text !== undefined) changeDraft(of, { texts: otherTexts })
          }}
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

/** As any field reads it, but that a scale's "2,650" is not taken for less than three. */
function readDraft(text: string, field: NumberField, units: UnitChoice): Reading {
  const problem = groupedProblem(text)
  return problem === null ? readField(text, field, units) : { ok: false, problem }
}

interface WordsProps {
  readonly of: Exclude<keyof Drafts, "sheet">
  readonly name: string
  readonly label: string
  readonly longest: number
  readonly lines?: number
  readonly placeholder?: string
}

export function DraftWords({ of, name, label, longest, lines, placeholder }: WordsProps) {
  const { words } = useDraft(of)
  const id = useId()
  const shared = {
    id,
    maxLength: longest,
    placeholder,
    value: words[name] ?? "",
    "data-draft": name,
    onChange: ({ target }: { target: { value: string } }) =>
      changeDraft(of, { words: { ...words, [name]: target.value } }),
  }
  return (
    <div className="measure-words">
      <label htmlFor={id}>{label}</label>
      {lines === undefined ? (
        <input {...shared} type="text" autoComplete="off" />
      ) : (
        <textarea {...shared} rows={lines} />
      )}
    </div>
  )
}
