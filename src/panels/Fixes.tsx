import { useState } from "react"
import { setNumbers } from "../commands/numbers"
import { editChains } from "../commands/editChains"
import {
  changeText,
  effectText,
  missText,
  noSuggestionText,
  suggestionText,
  targetReadout,
  waysText,
} from "../describe/suggestions"
import type { Suggestion, TargetState } from "../scene/suggest"
import { spreads } from "../state/spreads"
import { useBench, useLive } from "../state/useBench"
import { fixes as words } from "../words/fixes"
import "./fixes.css"
import "./sections.css"
import { useProblem } from "./Problem"
import { type Found, useSuggestions } from "./useSuggestions"

/** Wide enough for the numbers above to keep most of their place. */
const WIDE = "(min-width: 701px)"

/**
 * For each target that is missed: by how much, and the cheapest changes that meet it, one press each. It lies over the
 * sheet's lower edge, so that no number moves when it comes or goes, and folds to one line.
 */
export default function Fixes() {
  const found = useSuggestions()
  const [open, setOpen] = useState(() => matchMedia(WIDE).matches)
  const stale = useLive(({ scene }) => found !== null && scene !== found.scene)
  if (found === null || found.missed.length === 0) return null
  return (
    <section className="fixes" aria-label={words.title} data-stale={stale || undefined} aria-busy={stale}>
      <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          <strong>{words.title}</strong> <span className="fixes-count">{waysText(found.suggestions.length)}</span>
        </summary>
        <div className="fixes-list">
          {found.missed.map((state) => (
            <Miss key={state.key} state={state} found={found} stale={stale} />
          ))}
        </div>
      </details>
    </section>
  )
}

function Miss({ state, found, stale }: { state: TargetState; found: Found; stale: boolean }) {
  const units = useLive(({ preferences }) => preferences)
  const spread = useLive((live) => spreads(live)?.[targetReadout[state.key]])
  const ways = found.suggestions.filter(({ target }) => target === state.key)
  return (
    <div className="miss">
      <p className="miss-words">{missText(state, units, spread)}.</p>
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
  const { problem, told } = useProblem()
  const text = suggestionText(found.scene, way, units)
  const change = changeText(found.scene, way, units)
  const tryIt = () => {
    // Worked out for another scene, it may no longer help: the new ones are on their way.
    if (stale || bench.store.getState().scene !== found.scene) return
    const result =
      "edits" in way
        ? editChains.run(bench, { label: change, edits: way.edits })
        : setNumbers.run(bench, { label: change, changes: way.changes, paired: false })
    told(result, words.done(text))
  }
  return (
    <li className="way">
      <span>
        <strong>{change}</strong>
        <span className="way-effect">{effectText(way, units)}</span>
      </span>
      <button type="button" onClick={tryIt} aria-disabled={stale} aria-label={words.tryThis(change)}>
        {words.tryIt}
      </button>
      {problem}
    </li>
  )
}
