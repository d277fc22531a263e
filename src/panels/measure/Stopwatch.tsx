import { type KeyboardEvent, useState } from "react"
import { readTaps } from "../../core/measure/instruments"
import { tappedText } from "../../describe/measureSteps"
import { useBench } from "../../state/useBench"
import { measureSheet } from "../../words/measureSheet"
import { changeDraftValues } from "./PointPicker"

const { watch: words } = measureSheet

/** No thumb is surer than this over all the swings, s, however even the taps look: both its ends are pressed by the same hand. */
const SUREST = 0.03

/**
 * A stopwatch that is tapped once a swing, by finger, mouse, Space or Enter. Times are the events' own, not when the page
 * got round to them. From the second swing on count and time stand in the fields. The count is none of the button's
 * name, which a screen reader would read out again at every tap: it is told at every tenth.
 */
export function Stopwatch() {
  const bench = useBench()
  const [taps, setTaps] = useState<readonly number[]>([])
  const tapped = readTaps(taps)
  const tap = (at: number) => {
    const next = [...taps, at]
    setTaps(next)
    const read = readTaps(next)
    if (read === null) return
    const tens = Math.floor(read.count / 10)
    if (tens > Math.floor((tapped?.count ?? 0) / 10)) bench.say(words.counted(read.count))
    changeDraftValues({
      count: read.count,
      seconds: Math.round(read.seconds * 1000) / 1000,
      ...(read.error === null ? {} : { errorSeconds: Math.round(Math.max(SUREST, read.error) * 1000) / 1000 }),
    })
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== " " && event.key !== "Enter") return
    event.preventDefault()
    if (!event.repeat) tap(event.timeStamp)
  }
  return (
    <div className="stopwatch">
      <button
        type="button"
        className="stopwatch-tap"
        onPointerDown={(event) => {
          if (event.button !== 0) return
          event.preventDefault()
          event.currentTarget.focus()
          tap(event.timeStamp)
        }}
        onKeyDown={onKeyDown}
        onClick={(event) => {
          // A press that came by neither pointer nor key: a screen reader's.
          if (event.detail === 0) tap(event.timeStamp)
        }}
      >
        <span className="stopwatch-count" aria-hidden="true">
          {tapped?.count ?? 0}
        </span>
        {taps.length === 0 ? words.first : words.next}
      </button>
      <p className="measure-note" aria-live="off">
        {tapped === null ? words.hint : tappedText(tapped.count, tapped.seconds, tapped.missed, tapped.doubled)}
      </p>
      {taps.length > 0 && (
        <button type="button" onClick={() => setTaps([])}>
          {words.startOver}
        </button>
      )}
    </div>
  )
}
