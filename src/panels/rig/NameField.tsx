import { useId, useState } from "react"
import { renameItem } from "../../commands/parts"
import { problemText } from "../../describe/problemText"
import { type Address, valueAt } from "../../scene/address"
import { useBench, useLive } from "../../state/useBench"
import { rig as words } from "../../words/rig"
import { Problem } from "../Problem"
import { pathAt } from "./focus"

/** As long as the file allows. */
const LONGEST = 120

/** The coach's own name for a part. A part without one is called by its kind. */
export function NameField({ address, fallback }: { address: Address; fallback: string | null }) {
  const bench = useBench()
  const id = useId()
  const name = useLive(({ scene }) => {
    const item = valueAt(scene, address) as { name?: string; label?: string } | undefined
    return item?.name ?? item?.label ?? ""
  })
  const [draft, setDraft] = useState<string | null>(null)
  const [problem, setProblem] = useState<string | null>(null)

  const commit = () => {
    if (draft === null || draft.trim() === name) return settle()
    const result =
      fallback === null && draft.trim() === ""
        ? { ok: false as const, errors: [{ code: "missing" as const, path: "", message: words.nameNeeded }] }
        : renameItem.run(bench, { address, name: draft })
    if (!result.ok) return setProblem(problemText(bench.store.getState(), result.errors))
    settle()
    // An accessory's path is its name: what was selected still is.
    const path = pathAt(bench, address)
    if (path !== null) bench.setView({ selected: path })
    bench.say(words.renamed)
  }
  const settle = () => {
    setDraft(null)
    setProblem(null)
  }

  return (
    <div className="name-field" data-invalid={problem !== null || undefined}>
      <label htmlFor={id}>{words.name}</label>
      <input
        id={id}
        type="text"
        data-control="rename"
        autoComplete="off"
        enterKeyHint="done"
        maxLength={LONGEST}
        value={draft ?? name}
        placeholder={fallback ?? undefined}
        aria-invalid={problem !== null || undefined}
        aria-describedby={problem === null ? undefined : `${id}-problem`}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={commit}
        onKeyDown={(event) => {
          if (event.key === "Enter") commit()
          if (event.key !== "Escape" || draft === null) return
          event.stopPropagation()
          settle()
        }}
      />
      <Problem text={problem} id={`${id}-problem`} />
    </div>
  )
}
