import { useEffect, useMemo, useState } from "react"
import { holdToCompare } from "../../commands/compare"
import { errorText } from "../../describe/errorText"
import { DROP_DECIMALS, nudgeCsv, turnPointText } from "../../describe/nudgeText"
import "../../panels/sections.css"
import "../../panels/sheet.css"
import { anglesAt, stringHold } from "../../scene/nudge"
import { beside } from "../../state/compared"
import { useBench, useLive } from "../../state/useBench"
import { nudge } from "../../words/nudge"
import { plot } from "../../words/plot"
import { Asking } from "./Asking"
import { useAsked } from "./asked"
import { createClock } from "./clock"
import { Drops } from "./Drops"
import { playDrop } from "./playDrop"
import { Holding } from "./Holding"
import "./nudge.css"
import { Pictures } from "./Pictures"
import { PlayBar } from "./PlayBar"
import { Target } from "./Target"
import { Traces } from "./Traces"
import { lastingOf, watch } from "./watched"

interface Props {
  /** Hands a table over as a file: its name without ending, and its text. */
  readonly onSave: (name: string, text: string) => void
}

/** The bow on the bench and the one held to compare, nudged alike: how they turn, and where their arrows would go. */
export default function NudgeSheet({ onSave }: Props) {
  const bench = useBench()
  const evaluation = useLive((state) => state.evaluation)
  const other = useLive(beside)
  const units = useLive(({ preferences }) => preferences)
  const asked = useAsked()
  const stringless = [evaluation, ...(other === null ? [] : [other.evaluation])]
    .filter((each) => stringHold(each) === null)
    .map(({ scene }) => scene.name)
  // A hold by a string that one of the bows does not have would be no comparison.
  const hold = asked.hold === "string" && stringless.length > 0 ? "free" : asked.hold
  const { kind, impulse, push, lastingS, leavesS } = asked
  const motion = kind === "drop" ? "pitch" : asked.motion
  const bows = useMemo(
    () => watch(evaluation, other, { kind, motion, impulse, push, lastingS, hold }),
    [evaluation, other, kind, motion, impulse, push, lastingS, hold],
  )
  const [clock] = useState(createClock)
  const end = bows.ok ? lastingOf(bows.value[0]!) : 0
  useEffect(() => clock.setEnd(end), [clock, end])
  const dropping = kind === "drop"
  const swinging = [evaluation, other?.evaluation].some((each) =>
    each?.now.parts.some(({ hung }) => hung !== undefined),
  )
  useEffect(() => {
    const bow = bows.ok ? bows.value[0] : undefined
    if (bow === undefined || bow.shot === null) return
    return playDrop(bench, bow.evaluation, bow.shot, bow.trace, clock)
  }, [bench, bows, clock])
  return (
    <div className="hills-sheet nudge-sheet">
      <Asking swinging={swinging} />
      {!bows.ok && <p className="problem">{bows.errors.map((error) => `${errorText(error, units)}.`).join(" ")}</p>}
      {bows.ok && (
        <>
          {!dropping && <Holding bows={bows.value} hold={hold} stringless={stringless} />}
          <section>
            <h2 className="sheet-heading">{bows.value.length > 1 ? nudge.sideBySide : nudge.watching}</h2>
            {other === null && (
              <p className="hills-note nudge-alone">
                {nudge.nobody}
                <button type="button" onClick={() => holdToCompare.run(bench, undefined)}>
                  {holdToCompare.label}
                </button>
              </p>
            )}
            <Pictures bows={bows.value} motion={motion} alone={dropping} clock={clock} />
            <PlayBar
              clock={clock}
              end={end}
              tell={(time) =>
                turnPointText(
                  time,
                  motion,
                  bows.value.map(({ name, trace }) => [name, anglesAt(trace, time)] as const),
                  dropping ? DROP_DECIMALS : undefined,
                )
              }
            />
          </section>
          {dropping ? <Drops bows={bows.value} /> : <Target bows={bows.value} clock={clock} />}
          <Traces bows={bows.value} motion={motion} clock={clock} leavesS={dropping ? null : leavesS} />
          <button type="button" onClick={() => onSave("nudge", nudgeCsv(bows.value))}>
            {plot.save}
          </button>
        </>
      )}
    </div>
  )
}
