import { useState } from "react"
import { setNumbers } from "../commands/numbers"
import { problemText } from "../describe/problemText"
import { changeText, missText, noSuggestionText, suggestionText } from "../describe/suggestions"
import type { Suggestion, TargetState } from "../scene/suggest"
import { useBench, useLive } from "../state/useBench"
import "./fixes.css"
import { type Found, useSuggestions } from "./useSuggestions"

/** For each target that is missed: by how much, and the cheapest changes that meet it, one press each. */
export default function Fixes() {
  const found = useSuggestions()
  const stale = useLive(({ scene }) => found !== null && scene !== found.scene)
  if (found === null || found.missed.length === 0) return null
  return (
    <section className="fixes" aria-label="Off target" data-stale={stale || undefined} aria-busy={stale}>
      <h2 className="sheet-heading">Off target</h2>
      {found.missed.map((state) => (
        <Miss key={state.key} state={state} found={found} stale={stale} />
      ))}
    </section>
  )
}

function Miss({ state, found, stale }: { state: TargetState; found: Found; stale: boolean }) {
  const units = useLive(({ preferences }) => preferences)
  const ways = found.suggestions.filter(({ target }) => target === state.key)
  return (
    <div className="miss">
      <p className="miss-words">{missText(state, units)}.</p>
      {ways.length === 0 ? (
        <p className="miss-none">{noSuggestionText}</p>
      ) : (
        <ul className="miss-ways">
          {ways.map((way) => (
            <Way key={way.id} way={way} found={found} stale={stale} />
          ))}
        </ul>
      )}
    </div>
  )
}

function Way({ way, found, stale }: { way: Suggestion; found: Found; stale: boolean }) {
  const bench = useBench()
  const units = useLive(({ preferences }) => preferences)
  const [problem, setProblem] = useState<string | null>(null)
  const text = suggestionText(found.scene, way, units)
  const change = changeText(found.scene, way, units)
  const effect = text.slice(change.length + ": ".length)
  const tryIt = () => {
    // Worked out for another scene, it may no longer help: the new ones are on their way.
    if (stale || bench.store.getState().scene !== found.scene) return
    const result = setNumbers.run(bench, { label: change, changes: way.changes, paired: false })
    setProblem(result.ok ? null : problemText(bench.store.getState(), result.errors))
    if (result.ok) bench.say(`${text}. Undo takes it back.`)
  }
  return (
    <li className="way">
      <span>
        <strong>{change}</strong>
        <span className="way-effect">{effect}</span>
      </span>
      <button type="button" onClick={tryIt} aria-disabled={stale} aria-label={`Try: ${change}`}>
        Try it
      </button>
      {problem !== null && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
    </li>
  )
}
