import { type RefObject, useMemo, useRef, useState } from "react"
import { compareWith } from "../../commands/compare"
import { changeImpression, type Impression, logSetup, removeSetup, tryAgain } from "../../commands/log"
import { impressionText, logCsv, readScores, scoresProblem, scoresText, triedTitle } from "../../describe/logText"
import { logFields } from "../../scene/measure/fields"
import type { Tried } from "../../scene/schema"
import { useBench, useLive } from "../../state/useBench"
import { triedSetups as words } from "../../words/triedSetups"
import { Problem, useProblem } from "../Problem"
import { CompareSetups } from "./CompareSetups"
import { DraftNumber, DraftWords } from "./DraftFields"
import { changeDraft, NO_DRAFT, useDraft } from "./drafts"
import { afterRemoval, editedPlace } from "./editing"
import { focusAfterRemoval, focusEntry } from "./entryFocus"
import type { SaveTable } from "./MeasureSheet"
import { today } from "./today"

/** Scores as they may be typed. */
const EXAMPLE = scoresText([27, 25, 28])

/** The log of setups that were shot: each with its rig, how it felt and what it scored. */
export function TriedSetups({ onSave }: { onSave: SaveTable }) {
  const bench = useBench()
  const log = useLive(({ scene }) => scene.log)
  const list = useRef<HTMLOListElement>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  return (
    <section className="tried-setups">
      <h2 className="sheet-heading" ref={heading} tabIndex={-1}>
        {words.heading}
      </h2>
      <p className="measure-note">{words.note}</p>
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
            {words.saveTable}
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
  const { words: typed, values } = draft
  const editing = useLive(({ scene }) => editedPlace(draft.editing, scene.log))
  const scores = readScores(typed.scores ?? "")
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
      date: typed.date ?? today(),
      name: (typed.name ?? "").trim(),
      feel: typed.feel ?? "",
      ...(values.rating === undefined ? {} : { rating: values.rating }),
      scores,
      ...(values.groupMm === undefined ? {} : { groupMm: values.groupMm }),
      note: typed.note ?? "",
    }
    const result =
      editing === null
        ? logSetup.run(bench, { impression })
        : changeImpression.run(bench, { place: editing, impression })
    if (told(result, editing === null ? words.form.added : words.form.changed(editing + 1)).ok) clear()
  }
  return (
    <div className="tried-form">
      <DraftWords of="tried" name="name" label={words.form.name} longest={200} placeholder={words.form.nameExample} />
      <DraftWords of="tried" name="feel" label={words.form.feel} longest={200} />
      <Rating value={values.rating} />
      <DraftWords of="tried" name="scores" label={words.form.scores} longest={300} placeholder={EXAMPLE} />
      {asked && <Problem text={scoresProblem(typed.scores ?? "")} />}
      <DraftNumber of="tried" name="groupMm" field={logFields.groupMm} />
      <DraftWords of="tried" name="note" label={words.form.note} longest={2000} lines={2} />
      <div className="measure-buttons">
        <button type="button" onClick={keep}>
          {editing === null ? words.form.add : words.form.keep(editing + 1)}
        </button>
        {editing !== null && (
          <button type="button" onClick={clear}>
            {words.form.leave}
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
      <legend>{words.form.rating}</legend>
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
        <button type="button" onClick={() => told(tryAgain.run(bench, { place }), words.entry.onBow(title))}>
          {words.entry.putOn}
          <span className="visually-hidden"> {title}</span>
        </button>
        <button type="button" onClick={hold}>
          {words.entry.hold}
          <span className="visually-hidden"> {title}</span>
        </button>
        <button type="button" data-control="change" onClick={change}>
          {words.entry.change}
          <span className="visually-hidden"> {title}</span>
        </button>
        <button
          type="button"
          data-control="remove"
          onClick={() => {
            if (!told(removeSetup.run(bench, { place }), words.entry.removed(title)).ok) return
            changeDraft("tried", ({ editing }) => ({ editing: afterRemoval(editing, place) }))
            onRemove()
          }}
        >
          {words.entry.remove}
          <span className="visually-hidden"> {title}</span>
        </button>
      </div>
      {problem}
    </li>
  )
}
