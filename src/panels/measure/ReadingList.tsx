import type { RefObject } from "react"
import { excludeReading, removeReading } from "../../commands/measure"
import { kindTitles, missText, onWords, placeText, readingText, suspectMark } from "../../describe/measureText"
import { type MeasureResult, stillMounted } from "../../scene/measure"
import type { Measurement } from "../../scene/schema"
import { useBench, useLive } from "../../state/useBench"
import { measureSheet } from "../../words/measureSheet"
import { Check } from "../Check"
import { useProblem } from "../Problem"
import { changeDraft } from "./drafts"
import { afterRemoval } from "./editing"
import { focusAfterRemoval } from "./entryFocus"
import { draftOf } from "./reading"

const { list: words } = measureSheet

interface ListProps {
  readonly result: MeasureResult | null
  /** Where the keyboard goes on when the list has no reading left. */
  readonly heading: RefObject<HTMLElement | null>
  readonly list: RefObject<HTMLOListElement | null>
}

/** Every reading with how far it is from the fit; each can be left out, changed or removed. */
export function ReadingList({ result, heading, list }: ListProps) {
  const readings = useLive(({ scene }) => scene.measurements)
  if (readings === undefined) return null
  const suspects = result?.readings.filter(({ suspect }) => suspect).length ?? 0
  return (
    <section>
      <h2 className="sheet-heading">{words.heading}</h2>
      <ol className="readings" ref={list}>
        {readings.map((reading, place) => (
          <Reading
            // biome-ignore lint/suspicious/noArrayIndexKey: a reading is known by its place in the file's list
            key={place}
            reading={reading}
            place={place}
            suspects={suspects}
            onRemove={() => focusAfterRemoval(list.current, place, heading.current)}
            result={result?.readings.find((each) => each.place === place)}
          />
        ))}
      </ol>
    </section>
  )
}

interface Props {
  readonly reading: Measurement
  readonly place: number
  /** How many readings are in doubt with it, itself counted. */
  readonly suspects: number
  readonly result: MeasureResult["readings"][number] | undefined
  onRemove(): void
}

function Reading({ reading, place, suspects, result, onRemove }: Props) {
  const bench = useBench()
  const units = useLive(({ preferences }) => preferences)
  const mounted = useLive(({ scene }) => stillMounted(scene, reading))
  const { problem, told } = useProblem()
  const number = place + 1
  const name = words.reading(number)
  return (
    <li data-suspect={result?.suspect || undefined} data-excluded={reading.excluded || undefined}>
      <p className="reading-title">
        <strong>{words.title(number, kindTitles[reading.kind])}</strong> {onWords[reading.on]}
      </p>
      <p>
        {readingText(reading, units)}
        {"atMm" in reading && <span className="measure-note"> · {words.fromGrip(placeText(reading.atMm, units))}</span>}
      </p>
      {!mounted && <p className="reading-far">▲ {words.mountGone}</p>}
      {reading.excluded && <p className="measure-note">{words.leftOut}</p>}
      {result?.suspect && <p className="reading-far">▲ {suspectMark(suspects)}.</p>}
      {result !== undefined && (
        <ul className="reading-misses">
          {result.misses.map((miss) => (
            <li key={miss.what}>{missText(miss, units)}</li>
          ))}
        </ul>
      )}
      {(reading.note !== "" || reading.date !== "") && (
        <p className="measure-note">{[reading.date, reading.note].filter((word) => word !== "").join(" · ")}</p>
      )}
      <div className="measure-buttons">
        <Check
          checked={!reading.excluded}
          onSwitch={() =>
            told(
              excludeReading.run(bench, { place, excluded: !reading.excluded }),
              reading.excluded ? words.nowCounts(number) : words.nowLeftOut(number),
            )
          }
        >
          {words.counts}
          <span className="visually-hidden">, {name}</span>
        </Check>
        <button type="button" data-control="change" onClick={() => changeDraft("reading", draftOf(reading, place))}>
          {words.change}
          <span className="visually-hidden"> {name}</span>
        </button>
        <button
          type="button"
          data-control="remove"
          onClick={() => {
            if (!told(removeReading.run(bench, { place }), words.removed(number)).ok) return
            changeDraft("reading", ({ editing }) => ({ editing: afterRemoval(editing, place) }))
            onRemove()
          }}
        >
          {words.remove}
          <span className="visually-hidden"> {name}</span>
        </button>
      </div>
      {problem}
    </li>
  )
}
