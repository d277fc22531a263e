import { useCallback, useMemo, useState } from "react"
import { useStore } from "./useStore"
import { stillFits } from "../../commands/find"
import type { Asked, FoundSetup } from "../../scene/find"
import type { Finder } from "../../state/finder"
import { useLive } from "../../state/useBench"
import { findSheet } from "../../words/findSheet"
import { Misses } from "./Misses"
import { Scatter } from "./Scatter"
import { SetupTable } from "./SetupTable"
import { useGhost } from "./useGhost"

const { setups: words } = findSheet
const NONE: readonly FoundSetup[] = []

/** What was found so far: all of it as a picture and as a list; the one pointed at is seen through the present rig. */
export function Answers({ finder, earlier }: { finder: Finder; earlier: string | null }) {
  const asked = useStore(finder.store, (state) => state.asked)
  const outcome = useStore(finder.store, (state) => state.outcome)
  const progress = useStore(finder.store, (state) => state.progress)
  if (asked === null || outcome?.kind === "refused") return null
  const setups = outcome?.setups ?? progress?.setups ?? NONE
  if (setups.length > 0) return <Listed asked={asked} setups={setups} earlier={earlier} />
  return outcome === null || outcome.misses.length === 0 ? null : (
    <Misses asked={asked} misses={outcome.misses} earlier={earlier} />
  )
}

interface Props {
  readonly asked: Asked
  readonly setups: readonly FoundSetup[]
  /** What they were found for, where that is not what would be searched now. */
  readonly earlier: string | null
}

function Listed({ asked, setups, earlier }: Props) {
  const units = useLive(({ preferences }) => preferences)
  const fits = useLive(({ scene }) => stillFits({ asked: asked.scene, mounts: asked.question.mounts }, scene))
  const [pointed, setPointed] = useState<number | null>(null)
  const [openOrder, setOpenOrder] = useState<number | null>(null)
  const open = useMemo(() => setups.findIndex(({ order }) => order === openOrder), [setups, openOrder])
  const marked = pointed ?? (open < 0 ? null : open)
  useGhost(asked, fits && marked !== null ? (setups[marked] ?? null) : null)
  const choose = useCallback(
    (index: number) => {
      const { order } = setups[index]!
      setOpenOrder((before) => (before === order ? null : order))
    },
    [setups],
  )
  return (
    <section aria-labelledby="find-answers">
      <h2 className="sheet-heading" id="find-answers">
        {earlier === null ? words.heading(setups.length) : words.headingFor(setups.length, earlier)}
      </h2>
      {!fits && <p className="find-note">{words.bowChanged}</p>}
      <Scatter setups={setups} units={units} marked={marked} onPoint={setPointed} onChoose={choose} />
      <SetupTable
        asked={asked}
        setups={setups}
        fits={fits}
        marked={marked}
        open={open < 0 ? null : open}
        onPoint={setPointed}
        onChoose={choose}
      />
    </section>
  )
}
