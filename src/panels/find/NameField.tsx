import { useState } from "react"

interface Props {
  readonly label: string
  readonly name: string
  /** Letters at most. */
  readonly longest: number
  /** Whether nothing will do. */
  readonly mayBeEmpty?: boolean
  onChange(name: string): void
}

/** A name as a text field; taken with Enter or when it is left, and given up where nothing will not do. */
export function NameField({ label, name, longest, mayBeEmpty = false, onChange }: Props) {
  const [draft, setDraft] = useState<string | null>(null)
  const commit = () => {
    const text = draft?.trim().slice(0, longest)
    setDraft(null)
    if (text !== undefined && text !== name && (mayBeEmpty || text !== "")) onChange(text)
  }
  return (
    <label className="find-name">
      <span>{label}</span>
      <input
        type="text"
        maxLength={longest}
        value={draft ?? name}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={commit}
        onKeyDown={(event) => event.key === "Enter" && commit()}
      />
    </label>
  )
}
