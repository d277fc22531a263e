import { useEffect, useRef, useState } from "react"
import { useStore } from "./useStore"
import { coverText, lostText, outcomeText, refusalText, sleptText, wrongFieldsText } from "../../describe/findText"
import type { FindQuestion } from "../../scene/find"
import { piecesIn } from "../../scene/kit"
import type { Finder } from "../../state/finder"
import type { KitBox } from "../../state/kitBox"
import { useBench } from "../../state/useBench"
import { findSheet } from "../../words/findSheet"
import { search } from "../../words/search"
import type { FieldProblems } from "../fieldProblems"
import { Problem } from "../Problem"

const { search: words } = findSheet

interface Props {
  readonly box: KitBox
  readonly finder: Finder
  readonly question: FindQuestion
  readonly problems: FieldProblems
  /** What the last search belongs to, where that is not what would be searched now. */
  readonly earlier: string | null
}

/** Starts and ends the search, and says how far it is. */
export function SearchSection({ box, finder, question, problems, earlier }: Props) {
  const bench = useBench()
  const running = useStore(finder.store, (state) => state.running)
  const outcome = useStore(finder.store, (state) => state.outcome)
  const cutOff = useStore(finder.store, (state) => state.cutOff)
  const empty = useStore(box.store, (state) => piecesIn(state.kit) === 0)
  const wrong = useStore(problems, (state) => state)
  const [refused, setRefused] = useState(false)
  useEffect(() => {
    if (wrong.size === 0) setRefused(false)
  }, [wrong.size])
  // The error of the field just left may have pushed the words below the edge.
  const why = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (refused) why.current?.scrollIntoView({ block: "nearest" })
  }, [refused])
  useSaidAtTheEnd(finder, earlier)
  const start = () => {
    if (running || empty) return
    setRefused(wrong.size > 0)
    if (wrong.size > 0) return
    finder.start({ scene: bench.store.getState().scene, kit: box.store.getState().kit, question })
  }
  return (
    <section aria-label={words.section}>
      <div className="find-buttons find-search">
        <button type="button" className="find-start" aria-disabled={running || empty} onClick={start}>
          {words.start}
        </button>
        {running && (
          <button type="button" onClick={finder.cancel}>
            {words.stop}
          </button>
        )}
      </div>
      <div ref={why}>{refused && wrong.size > 0 && <Problem text={wrongFieldsText([...wrong.values()])} />}</div>
      {empty && <p className="find-note">{words.empty}</p>}
      {cutOff && !empty && <p className="find-note">{search.cutOff}</p>}
      {running && <Underway finder={finder} />}
      {outcome?.kind === "refused" && <Problem text={refusalText(outcome.errors)} />}
      {outcome?.kind === "searched" && <p className="find-outcome">{outcomeText(outcome, earlier)}</p>}
    </section>
  )
}

function Underway({ finder }: { finder: Finder }) {
  const progress = useStore(finder.store, (state) => state.progress)
  const slept = useStore(finder.store, (state) => sleptText(state.slept))
  const lost = lostText(progress?.lost ?? [])
  const share = progress === null || progress.combinations === 0 ? 0 : progress.covered / progress.combinations
  return (
    <div className="find-underway">
      <progress aria-label={words.progress} max={1} value={share} />
      <p className="find-outcome">
        {progress === null || progress.combinations === 0 ? words.listing : coverText(progress, null)}
      </p>
      <div role="status">
        {slept !== null && <p className="find-note">{slept}</p>}
        {lost !== null && <p className="find-note">{lost}</p>}
      </div>
    </div>
  )
}

/** Tells those who do not see the page what came of a search, once. */
function useSaidAtTheEnd(finder: Finder, earlier: string | null) {
  const bench = useBench()
  const outcome = useStore(finder.store, (state) => state.outcome)
  const last = useRef(outcome)
  useEffect(() => {
    if (outcome === last.current) return
    last.current = outcome
    if (outcome?.kind !== "searched") return
    bench.say(`${words.found(outcome.setups.length)} ${outcomeText(outcome, earlier)}`)
  }, [bench, outcome, earlier])
}
