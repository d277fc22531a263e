import { type KeyboardEvent, useId, useState } from "react"
import { fieldText, readField, stepped } from "../../describe/fieldText"
import type { NumberField } from "../../scene/fields"
import { useLive } from "../../state/useBench"
import { useFieldProblem } from "../fieldProblems"
import { NumberBox } from "../NumberBox"

interface Props {
  readonly label: string
  /** In a sentence elsewhere, where the label alone does not say which number it is. */
  readonly name?: string
  readonly field: NumberField
  /** In the file's unit. */
  readonly value: number
  onChange(value: number): void
  /** The id of words that say why the value cannot stand beside others. */
  readonly wrongBecause?: string | undefined
}

/** A number that belongs to a question and not to the scene, as a text field in the chosen units; Escape gives up what was typed. */
export function PlainNumber({ label, name = label, field, value, onChange, wrongBecause }: Props) {
  const units = useLive(({ preferences }) => preferences)
  const id = useId()
  const [draft, setDraft] = useState<string | null>(null)
  const [problem, setProblem] = useState<string | null>(null)
  useFieldProblem(id, name, problem !== null)
  const commit = () => {
    if (draft === null) return
    const reading = readField(draft, field, units)
    setProblem(reading.ok ? null : `${reading.problem}.`)
    if (!reading.ok) return
    setDraft(null)
    onChange(reading.value)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    const steps = event.key === "ArrowUp" ? 1 : event.key === "ArrowDown" ? -1 : 0
    if (event.key === "Enter") commit()
    if (event.key === "Escape" && draft !== null) {
      event.preventDefault()
      event.stopPropagation()
      setDraft(null)
      setProblem(null)
    }
    if (steps === 0 || draft !== null) return
    event.preventDefault()
    onChange(stepped(value, field, units, steps, event.shiftKey))
  }
  return (
    <NumberBox
      id={id}
      label={label}
      field={field}
      units={units}
      text={draft ?? fieldText(value, field.quantity, units)}
      problem={problem}
      wrongBecause={wrongBecause}
      onType={setDraft}
      onLeave={commit}
      onKeyDown={onKeyDown}
    />
  )
}
