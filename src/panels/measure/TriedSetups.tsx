import { type RefObject, useMemo, useRef, useState } from "react"
import { compareWith } from "../../commands/compare"
import { changeImpression, type Impression, logSetup, removeSetup, tryAgain } from "../../commands/log"
import { impressionText, logCsv, readScores, scoresText, triedTitle } from "../../describe/logText"
import { logFields } from "../../scene/measure/fields"
import type { Tried } from "../../scene/schema"
import { useBench, useLive } from "../../state/useBench"
import { Problem, useProblem } from "../Problem"
import { CompareSetups } from "./CompareSetups"
import { DraftNumber, DraftWords } from "./DraftFields"
import { changeDraft, NO_DRAFT, useDraft } from "./drafts"
import { afterRemoval, editedPlace } from "./editing"
import { focusAfterRemoval, focusEntry } from "./entryFocus"
import type { SaveTable } from "./MeasureSheet"
import { today } from "./today"

/** The log of setups that were shot: each with its rig, how it felt and what it scored. */
export function TriedSetups({ onSave }: { onSave: SaveTable }) {
  const bench = useBench()
  const log = useLive(({ scene }) => scene.log)
  const list = useRef<HTMLOListElement>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  return (
    <section className="tried-setups">
      <h2 className="sheet-heading" ref={heading} tabIndex={-1}>
        Tried setups
      </h2>
      <p className="measure-note">
        Note the rig that is on the bow now, with how it shot. Its numbers can be looked up and compared later.
      </p>
      <TriedForm list={list} />
      {log !== undefined && (
        <>
          <ol className="readings" ref={list}>
            {log.map((tried, place) => (
              <TriedEntry
                // biome-ignore lint/suspicious/noArrayIndexKey: a setup is known by its place in the file's list
                key={place}
                tried={tried}
                place={place}
                onRemove={() => focusAfterRemoval(list.current, place, heading.current)}
              />
            ))}
          </ol>
          <CompareSetups log={log} />
          <button type="button" onClick={() => onSave("tried-setups", logCsv(bench.store.getState().scene))}>
            Save the log as CSV
          </button>
        </>
      )}
    </section>
  )
}

function TriedForm({ list }: { list: RefObject<HTMLElement | null> }) {
  const bench = useBench()
  const { problem, told } = useProblem()
  const draft = useDraft("tried")
  const { words, values } = draft
  const editing = useLive(({ scene }) => editedPlace(draft.editing, scene.log))
  const scores = readScores(words.scores ?? "")
  const [asked, setAsked] = useState(false)
  const clear = () => {
    setAsked(false)
    changeDraft("tried", { ...NO_DRAFT, editing: null })
    if (editing !== null) focusEntry(list.current, editing, "change")
  }
  const keep = () => {
    setAsked(true)
    if (scores === null) return
    const impression: Impression = {
      date: words.date ?? today(),
      name: (words.name ?? "").trim(),
      feel: words.feel ?? "",
      ...(values.rating === undefined ? {} : { rating: values.rating }),
      scores,
      ...(values.groupMm === undefined ? {} : { groupMm: values.groupMm }),
      note: words.note ?? "",
    }
    const result =
      editing === null
        ? logSetup.run(bench, { impression })
        : changeImpression.run(bench, { place: editing, impression })
    if (told(result, editing === null ? "Setup noted." : `Setup ${editing + 1} changed.`).ok) clear()
  }
  return (
    <div className="tried-form">
      <DraftWords of="tried" name="name" label="Name" longest={200} placeholder="long bar, two discs" />
      <DraftWords of="tried" name="feel" label="How it felt, in a few words" longest={200} />
      <Rating value={values.rating} />
      <DraftWords of="tried" name="scores" label="Scores" longest={300} placeholder="27, 25, 28" />
      {asked && scores === null && <Problem text="Scores are numbers with commas between them." />}
      <DraftNumber of="tried" name="groupMm" field={logFields.groupMm} />
      <DraftWords of="tried" name="note" label="Note" longest={2000} lines={2} />
      <div className="measure-buttons">
        <button type="button" onClick={keep}>
          {editing === null ? "Note this setup" : `Keep the change of setup ${editing + 1}`}
        </button>
        {editing !== null && (
          <button type="button" onClick={clear}>
            Leave it as it was
          </button>
        )}
      </div>
      {problem}
    </div>
  )
}

/** One to five, or none: pressing the chosen one again takes it back. */
function Rating({ value }: { value: number | undefined }) {
  const { values } = useDraft("tried")
  const { rating: _, ...others } = values
  return (
    <fieldset className="rating">
      <legend>From 1, poor, to 5, just right</legend>
      {[1, 2, 3, 4, 5].map((each) => (
        <button
          key={each}
          type="button"
          aria-pressed={value === each}
          onClick={() => changeDraft("tried", { values: value === each ? others : { ...others, rating: each } })}
        >
          {each}
        </button>
      ))}
    </fieldset>
  )
}

function TriedEntry({ tried, place, onRemove }: { tried: Tried; place: number; onRemove(): void }) {
  const bench = useBench()
  const units = useLive(({ preferences }) => preferences)
  const { problem, told } = useProblem()
  const title = useMemo(() => triedTitle(tried, place), [tried, place])
  const hold = () => {
    const { scene } = bench.store.getState()
    compareWith.run(bench, { name: title, scene: { ...scene, rig: tried.rig } })
  }
  const change = () =>
    changeDraft("tried", {
      texts: {},
      values: {
        ...(tried.rating === undefined ? {} : { rating: tried.rating }),
        ...(tried.groupMm === undefined ? {} : { groupMm: tried.groupMm }),
      },
      words: {
        date: tried.date,
        name: tried.name,
        feel: tried.feel,
        note: tried.note,
        scores: scoresText(tried.scores),
      },
      editing: { place, was: tried },
    })
  return (
    <li>
      <p className="reading-title">
        <strong>{title}</strong>
      </p>
      <p>{impressionText(tried, units)}</p>
      {tried.note !== "" && <p className="measure-note">{tried.note}</p>}
      <div className="measure-buttons">
        <button type="button" onClick={() => told(tryAgain.run(bench, { place }), `${title} is on the bow.`)}>
          Put on the bow<span className="visually-hidden"> {title}</span>
        </button>
        <button type="button" onClick={hold}>
          Hold to compare<span className="visually-hidden"> {title}</span>
        </button>
        <button type="button" data-control="change" onClick={change}>
          Change<span className="visually-hidden"> {title}</span>
        </button>
        <button
          type="button"
          data-control="remove"
          onClick={() => {
            if (!told(removeSetup.run(bench, { place }), `${title} removed; Undo brings it back`).ok) return
            changeDraft("tried", ({ editing }) => ({ editing: afterRemoval(editing, place) }))
            onRemove()
          }}
        >
          Remove<span className="visually-hidden"> {title}</span>
        </button>
      </div>
      {problem}
    </li>
  )
}
