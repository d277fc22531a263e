import { useEffect, useId, useState } from "react"
import { fieldText, readField } from "../../describe/fieldText"
import type { NumberField } from "../../scene/fields"
import { useLive } from "../../state/useBench"
import { NumberBox } from "../NumberBox"
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
 * stays as typed, with the reason once typing pauses: a screen reader would else read out one at every key.
 */
export function DraftNumber({ of, name, field, label = field.label }: Props) {
  const units = useLive(({ preferences }) => preferences)
  const { values, texts } = useDraft(of)
  const id = useId()
  const text = texts[name]
  const value = values[name] ?? field.fallback
  const reading = text === undefined || text.trim() === "" ? null : readField(text, field, units)
  const problem = reading === null || reading.ok ? null : `${reading.problem}.`
  const [settled, settle] = useSettled(text)
  const { [name]: _, ...otherTexts } = texts
  const { [name]: __, ...otherValues } = values
  const type = (typed: string) => {
    const read = readField(typed, field, units)
    changeDraft(of, {
      texts: { ...texts, [name]: typed },
      values: read.ok ? { ...values, [name]: read.value } : otherValues,
    })
  }
  const leave = () => {
    settle()
    if (problem === null && text !== undefined) changeDraft(of, { texts: otherTexts })
  }
  return (
    <NumberBox
      id={id}
      label={label}
      field={field}
      units={units}
      text={text ?? (value === undefined ? "" : fieldText(value, field.quantity, units))}
      problem={settled ? problem : null}
      draft={name}
      onType={type}
      onLeave={leave}
    />
  )
}

/** Nobody who types on stops for longer, ms. */
const PAUSE_MS = 700

/** Whether a text has stood for a while, or as long as the field is there; and a way to say that it does. */
function useSettled(text: string | undefined): [boolean, () => void] {
  const [stood, setStood] = useState(text)
  useEffect(() => {
    const timer = setTimeout(() => setStood(text), PAUSE_MS)
    return () => clearTimeout(timer)
  }, [text])
  return [text === stood, () => setStood(text)]
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
