import { useId, useState } from "react"
import { rename } from "../../commands/bench"
import { writeNotes } from "../../commands/setup"
import { problemText } from "../../describe/problemText"
import { useBench, useLive } from "../../state/useBench"
import { bowSheet } from "../../words/bowSheet"
import { Problem } from "../Problem"

/** As long as the file allows. */
const LONGEST_NAME = 200
const LONGEST_NOTES = 20_000

/** The setup's name and the coach's notes on it. Written when the field is left; Escape takes it back. */
export function Words() {
  const bench = useBench()
  const name = useLive(({ scene }) => scene.name)
  const notes = useLive(({ scene }) => scene.notes)
  return (
    <>
      <TextField
        label={bowSheet.name}
        value={name}
        longest={LONGEST_NAME}
        write={(text) => rename.run(bench, { name: text.trim() })}
      />
      <TextField
        label={bowSheet.notes}
        value={notes}
        longest={LONGEST_NOTES}
        lines={4}
        write={(text) => writeNotes.run(bench, { notes: text })}
      />
    </>
  )
}

interface Props {
  readonly label: string
  readonly value: string
  readonly longest: number
  readonly lines?: number
  write(text: string): ReturnType<typeof rename.run>
}

function TextField({ label, value, longest, lines, write }: Props) {
  const bench = useBench()
  const id = useId()
  const [draft, setDraft] = useState<string | null>(null)
  const [problem, setProblem] = useState<string | null>(null)
  const commit = () => {
    if (draft === null) return
    const result = draft === value ? { ok: true as const } : write(draft)
    setProblem(result.ok ? null : problemText(bench.store.getState(), result.errors))
    if (result.ok) setDraft(null)
  }
  const shared = {
    id,
    maxLength: longest,
    value: draft ?? value,
    "aria-invalid": problem !== null || undefined,
    "aria-describedby": problem === null ? undefined : `${id}-problem`,
    onBlur: commit,
  }
  const giveUp = () => {
    setDraft(null)
    setProblem(null)
  }
  return (
    <div className="words-field">
      <label htmlFor={id}>{label}</label>
      {lines === undefined ? (
        <input
          {...shared}
          type="text"
          autoComplete="off"
          onChange={(event) => setDraft(event.target.value)}
          onKeyDown={(event) => {
            if (event.key === "Enter") commit()
            if (event.key === "Escape") giveUp()
          }}
        />
      ) : (
        <textarea
          {...shared}
          rows={lines}
          onChange={(event) => setDraft(event.target.value)}
          onKeyDown={(event) => event.key === "Escape" && giveUp()}
        />
      )}
      <Problem text={problem} id={`${id}-problem`} />
    </div>
  )
}
