import { useId, useLayoutEffect, useRef, useState } from "react"
import { setNumber } from "../commands/numbers"
import { fieldText, fieldUnit, readField } from "../describe/fieldText"
import { problemText } from "../describe/problemText"
import { changeText } from "../picture/handleText"
import { useBench } from "../state/useBench"
import { handleNamed } from "./current"

/**
 * The small field that Enter opens at a handle. Enter takes the value, Escape leaves it; what cannot be taken stays in
 * the field with the reason under it.
 */
export function TypedValue({ handleKey, onClose }: { handleKey: string; onClose: () => void }) {
  const bench = useBench()
  const id = useId()
  const input = useRef<HTMLInputElement>(null)
  // Closing moves the focus, and a field that loses it takes its value: not one that was given up.
  const closed = useRef(false)
  const [problem, setProblem] = useState<string | null>(null)
  const [first] = useState(() => {
    const state = bench.store.getState()
    const handle = handleNamed(state, handleKey)
    if (handle === undefined) return null
    const { quantity } = handle.field
    const { unit } = fieldUnit(quantity, state.preferences)
    return { label: handle.label, unit, text: fieldText(handle.value, quantity, state.preferences) }
  })

  useLayoutEffect(() => {
    input.current?.focus({ preventScroll: true })
    input.current?.select()
  }, [])
  if (first === null) return null

  const close = () => {
    closed.current = true
    onClose()
  }

  const take = () => {
    if (closed.current) return
    const text = input.current?.value ?? ""
    if (text === first.text) return close()
    const state = bench.store.getState()
    const handle = handleNamed(state, handleKey)
    if (handle === undefined) return close()
    const read = readField(text, handle.field, state.preferences)
    if (!read.ok) return setProblem(read.problem)
    const done = setNumber.run(bench, { key: handleKey, value: read.value })
    if (!done.ok) return setProblem(problemText(state, done.errors))
    const after = bench.store.getState()
    const now = handleNamed(after, handleKey)
    if (now !== undefined) bench.say(changeText(now, after.evaluation, after.preferences))
    close()
  }

  return (
    <form
      className="handle-typing"
      onSubmit={(event) => {
        event.preventDefault()
        take()
      }}
      onKeyDown={(event) => {
        event.stopPropagation()
        if (event.key === "Escape") close()
      }}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) take()
      }}
      onPointerDown={(event) => event.stopPropagation()}
    >
      <label htmlFor={id}>{first.label}</label>
      <span className="handle-typing-line">
        <input
          ref={input}
          id={id}
          defaultValue={first.text}
          inputMode="decimal"
          autoComplete="off"
          aria-invalid={problem !== null}
          aria-describedby={problem === null ? undefined : `${id}-problem`}
        />
        {first.unit !== "" && <span aria-hidden="true">{first.unit}</span>}
      </span>
      <span className="handle-typing-problem" id={`${id}-problem`} role="alert">
        {problem}
      </span>
    </form>
  )
}
