import { type KeyboardEvent, useId, useState } from "react"
import { clearNumber, setNumber } from "../commands/numbers"
import { allowedText, fieldSaid, fieldText, fieldUnit, readField, stepped } from "../describe/fieldText"
import { problemText } from "../describe/problemText"
import { useBench, usePreferences } from "../state/useBench"
import { fields as words } from "../words/fields"
import "./fields.css"
import { useHeldKey } from "./useHeldKey"
import { slotNamed } from "../scene/slots"
import { type LiveSlot, useSlot } from "./useSlot"

interface Props {
  /** A slot's key, `front/rod:lengthMm`. */
  readonly of: string
  /** Instead of the slot's own label, where the place makes a shorter one plain. */
  readonly label?: string
}

/** Any number of the scene as a text field in the chosen units. Nothing where the scene has no such number. */
export function NumberField({ of: key, label }: Props) {
  const slot = useSlot(key)
  return slot === null ? null : <SlotField slotKey={key} slot={slot} label={label ?? slot.label} />
}

function SlotField({ slotKey: key, slot, label }: { slotKey: string; slot: LiveSlot; label: string }) {
  const bench = useBench()
  const units = usePreferences()
  const held = useHeldKey(bench)
  const id = useId()
  const [draft, setDraft] = useState<string | null>(null)
  const [problem, setProblem] = useState<string | null>(null)
  const { value, absent, field, title } = slot
  const { unit } = fieldUnit(field.quantity, units)
  const shown = draft ?? (absent ? "" : fieldText(value, field.quantity, units))

  const settle = () => {
    setDraft(null)
    setProblem(null)
  }
  const tell = () => {
    const { scene } = bench.store.getState()
    const now = slotNamed(scene, key)
    if (now !== undefined)
      bench.say(now.absent ? words.isNone(title) : words.is(title, fieldSaid(now.value, field.quantity, units)))
  }

  /** Takes what was typed; false when it was refused, with the reason shown and the text kept. */
  const commit = (): boolean => {
    if (draft === null) return true
    const empty = draft.trim() === ""
    const reading = readField(draft, field, units)
    if (!reading.ok && !empty) {
      setProblem(words.wrong(title, reading.problem))
      return false
    }
    const result = reading.ok ? setNumber.run(bench, { key, value: reading.value }) : clearNumber.run(bench, { key })
    if (!result.ok) {
      setProblem(
        empty ? words.needed(title, allowedText(field, units)) : problemText(bench.store.getState(), result.errors),
      )
      return false
    }
    settle()
    tell()
    return true
  }

  const step = (steps: number, coarse: boolean) => {
    const now = slotNamed(bench.store.getState().scene, key)
    if (now === undefined) return
    const next = stepped(now.value, field, units, steps, coarse)
    if (next === now.value && !now.absent) return
    const result = setNumber.run(bench, { key, value: next })
    setProblem(result.ok ? null : problemText(bench.store.getState(), result.errors))
  }

  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    const steps = event.key === "ArrowUp" ? 1 : event.key === "ArrowDown" ? -1 : 0
    if (steps !== 0 && !event.altKey && !event.ctrlKey && !event.metaKey) {
      event.preventDefault()
      if (!commit()) return
      held.begin(title)
      step(steps, event.shiftKey)
    } else if (event.key === "Enter") {
      commit()
    } else if (event.key === "Escape" && (held.cancel() || draft !== null)) {
      event.preventDefault()
      event.stopPropagation()
      settle()
    }
  }
  const release = () => {
    if (held.end()) tell()
  }

  return (
    <div className="number-field" data-invalid={problem !== null || undefined}>
      <label htmlFor={id}>{label}</label>
      <span className="number-field-box">
        {field.quantity === "count" && (
          <StepButton label={words.less(title)} sign="−" onPress={() => step(-1, false)} />
        )}
        <input
          id={id}
          type="text"
          inputMode={field.min < 0 ? "text" : "decimal"}
          autoComplete="off"
          spellCheck={false}
          enterKeyHint="done"
          data-slot={key}
          value={shown}
          placeholder={absent ? words.none : undefined}
          aria-invalid={problem !== null || undefined}
          aria-describedby={`${id}-more`}
          title={words.tip(capital(allowedText(field, units)))}
          onChange={(event) => {
            setDraft(event.target.value)
            if (problem !== null && readField(event.target.value, field, units).ok) setProblem(null)
          }}
          onKeyDown={onKeyDown}
          onKeyUp={release}
          onBlur={() => {
            release()
            commit()
          }}
          onFocus={(event) => event.target.select()}
        />
        {field.quantity === "count" && <StepButton label={words.more(title)} sign="+" onPress={() => step(1, false)} />}
        <span className="number-field-unit">{unit}</span>
      </span>
      <span className="number-field-problem" id={`${id}-more`} role={problem === null ? undefined : "alert"}>
        {problem ?? (
          <span className="visually-hidden">
            {unit === "" ? allowedText(field, units) : words.inUnit(unit, allowedText(field, units))}
          </span>
        )}
      </span>
    </div>
  )
}

function StepButton({ label, sign, onPress }: { label: string; sign: string; onPress(): void }) {
  return (
    <button type="button" className="step-button" aria-label={label} onClick={onPress}>
      {sign}
    </button>
  )
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
