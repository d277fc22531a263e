import { useId, useState } from "react"
import { stillFits } from "../../commands/find"
import { limitWords, missText } from "../../describe/findText"
import type { Asked, FoundSetup, Miss } from "../../scene/find"
import { useLive } from "../../state/useBench"
import { findSheet } from "../../words/findSheet"
import { SetupDetail } from "./SetupDetail"
import { TrySetup } from "./TrySetup"
import { useGhost } from "./useGhost"

const { misses: words } = findSheet

interface Props {
  readonly asked: Asked
  readonly misses: readonly Miss[]
  /** What was searched, where that is not what would be searched now. */
  readonly earlier: string | null
}

/** Why nothing was found: each limit with how near the kit comes to it, and that setup to try. */
export function Misses({ asked, misses, earlier }: Props) {
  const units = useLive(({ preferences }) => preferences)
  const fits = useLive(({ scene }) => stillFits({ asked: asked.scene, mounts: asked.question.mounts }, scene))
  const [pointed, setPointed] = useState<Miss | null>(null)
  const [openKey, setOpenKey] = useState<Miss["key"] | null>(null)
  const opened = misses.find(({ key }) => key === openKey)
  useGhost(asked, fits ? ((pointed ?? opened)?.nearest?.setup ?? null) : null)
  return (
    <section aria-labelledby="find-misses">
      <h2 className="sheet-heading" id="find-misses">
        {earlier === null ? words.heading : words.headingFor(earlier)}
      </h2>
      <ul className="find-misses">
        {misses.map((miss) => (
          <li
            key={miss.key}
            onPointerEnter={(event) => event.pointerType === "mouse" && setPointed(miss)}
            onPointerLeave={() => setPointed(null)}
            onFocus={() => setPointed(miss)}
            onBlur={() => setPointed(null)}
          >
            <span>{missText(miss, units)}</span>
            {miss.nearest !== null && (
              <Nearest
                asked={asked}
                setup={miss.nearest.setup}
                limit={limitWords[miss.key].name}
                fits={fits}
                open={miss.key === openKey}
                onOpen={(wanted) => setOpenKey(wanted ? miss.key : null)}
              />
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}

interface NearestProps {
  readonly asked: Asked
  readonly setup: FoundSetup
  /** "balance point forward": what it comes nearest in. */
  readonly limit: string
  readonly fits: boolean
  readonly open: boolean
  onOpen(open: boolean): void
}

/** The setup that comes nearest: what to do to get there, which also shows it beside the rig, and to try it. */
function Nearest({ asked, setup, limit, fits, open, onOpen }: NearestProps) {
  const id = useId()
  return (
    <>
      <span className="find-miss-buttons">
        <button
          type="button"
          aria-expanded={open}
          aria-controls={open ? id : undefined}
          aria-label={words.whatToDoFor(limit)}
          onClick={() => onOpen(!open)}
        >
          {words.whatToDo}
        </button>
        <TrySetup asked={asked} setup={setup} name={findSheet.trying.nearest(limit)} fits={fits} />
      </span>
      {open && (
        <div className="find-detail" id={id}>
          <SetupDetail setup={setup} hold={asked.question.hold} />
        </div>
      )}
    </>
  )
}
