import { type RefObject, useEffect, useRef } from "react"
import { addReading, changeReading } from "../../commands/measure"
import { stepWords } from "../../describe/measureSteps"
import { axisWords, onWords } from "../../describe/measureText"
import type { NamedPoint } from "../../scene/measure"
import { measureFields } from "../../scene/measure/fields"
import type { Measurement } from "../../scene/schema"
import { useBench, useLive } from "../../state/useBench"
import { measureSheet } from "../../words/measureSheet"
import { readingSteps } from "../../words/readingSteps"
import { Choice } from "../Choice"
import { useProblem } from "../Problem"
import { DraftNumber, DraftWords } from "./DraftFields"
import { changeDraft, NO_DRAFT, type ReadingDraft, useDraft } from "./drafts"
import { editedPlace } from "./editing"
import { focusEntry } from "./entryFocus"
import { PointPicker } from "./PointPicker"
import { isPlaced, type MeasureField, missing, readingOf, typedFields, usualFields } from "./reading"
import { StepPicture } from "./StepPicture"
import { Stopwatch } from "./Stopwatch"
import { today } from "./today"
import { TiltSensor } from "./TiltSensor"

const { take: words } = measureSheet

const kinds = ["scale", "hang", "swing", "twist"] as const
const DONE = { ok: true as const, value: undefined }

interface Props {
  readonly points: readonly NamedPoint[]
  readonly heading: RefObject<HTMLHeadingElement | null>
  /** The readings there are: from a changed one the keyboard goes back to its place there. */
  readonly list: RefObject<HTMLElement | null>
}

/** One reading in the making: how it is taken, what it tells, its numbers; then onto the list. */
export function TakeReading({ points, heading, list }: Props) {
  const bench = useBench()
  const draft = useDraft("reading")
  const { problem, told } = useProblem()
  const { kind } = draft
  const editing = useLive(({ scene }) => editedPlace(draft.editing, scene.measurements))
  useFocusOnEdit(editing, heading)
  const { how, tells, usual } = stepWords[kind]
  const open = missing(draft, points)
  const leave = () => {
    clear()
    if (editing !== null) focusEntry(list.current, editing, "change")
  }
  const finish = () => {
    if (open.length > 0) return
    const reading = readingOf(draft, bench.store.getState().scene, points, today())
    const result =
      editing === null ? addReading.run(bench, { reading }) : changeReading.run(bench, { place: editing, reading })
    if (told(result, editing === null ? words.added : words.changed(editing + 1)).ok) leave()
  }
  return (
    <section className="take-reading">
      <h2 className="sheet-heading" ref={heading} tabIndex={-1}>
        {editing === null ? words.heading : words.headingOfChange(editing + 1)}
      </h2>
      <Choice
        name={words.which}
        value={kind}
        options={kinds.map((each) => [each, stepWords[each].verb] as const)}
        onChoose={(chosen) => {
          changeDraft("reading", { kind: chosen })
          return DONE
        }}
      />
      <StepPicture kind={kind} />
      <ol className="step-how">
        {how.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
      <p className="measure-note">
        <strong>{words.tells}</strong> {tells} {usual}
      </p>
      {kind !== "scale" && <p className="measure-note">{readingSteps.hanging}</p>}
      <OnTheHook draft={draft} />
      {isPlaced(kind) && <PointPicker points={points} label={kind === "hang" ? words.hungFrom : words.swingsAbout} />}
      {(kind === "swing" || kind === "twist") && <Axis draft={draft} />}
      {kind === "hang" && <TiltSensor />}
      {(kind === "swing" || kind === "twist") && <Stopwatch />}
      <Numbers names={typedFields(kind)} />
      {kind === "hang" && <Cant read={draft.cantRead} />}
      <details className="measure-errors">
        <summary>{words.howSure}</summary>
        <p className="measure-note">{words.giveOrTake}</p>
        <Numbers names={usualFields(kind)} />
      </details>
      <DraftWords of="reading" name="note" label={words.note} longest={500} />
      <div className="measure-buttons">
        <button type="button" className="measure-main" aria-disabled={open.length > 0} onClick={finish}>
          {editing === null ? words.add : words.keep}
        </button>
        <button type="button" onClick={leave}>
          {editing === null ? words.clear : words.leave}
        </button>
      </div>
      {open.length > 0 && <p className="measure-note">{words.stillToCome(open.join(words.between))}</p>}
      {problem}
    </section>
  )
}

/** The kind and what hangs stay for the next reading; what was read goes. */
const clear = () => changeDraft("reading", { ...NO_DRAFT, editing: null })

/** A reading that is taken up to be changed stands far below its button. */
function useFocusOnEdit(editing: number | null, heading: RefObject<HTMLElement | null>) {
  const before = useRef(editing)
  useEffect(() => {
    if (editing !== null && editing !== before.current) heading.current?.focus()
    before.current = editing
  }, [editing, heading])
}

function Numbers({ names }: { names: readonly MeasureField[] }) {
  return names.map((name) => <DraftNumber key={name} of="reading" name={name} field={measureFields[name]} />)
}

function OnTheHook({ draft }: { draft: ReadingDraft }) {
  const before = useLive(({ scene }) => {
    const place = editedPlace(draft.editing, scene.measurements)
    return place === null ? undefined : scene.measurements?.[place]
  })
  const rigged = useLive(({ scene }) => scene.rig.some(({ chain }) => chain.length > 0))
  const then = before?.on === "rigged"
  const value = draft.on !== "rigged" ? draft.on : then && draft.words.rig === "then" ? "then" : "rigged"
  const options: [string, string][] = [
    ["rigged", rigged ? words.riggedNow : words.bareNow],
    ...(then ? ([["then", words.riggedThen]] as [string, string][]) : []),
    ["bow", onWords.bow],
    ["riser", onWords.riser],
  ]
  return (
    <label className="measure-pick">
      <span>{words.measured}</span>
      <select
        value={value}
        onChange={({ target }) => {
          const on = (target.value === "then" ? "rigged" : target.value) as Measurement["on"]
          changeDraft("reading", { on, words: { ...draft.words, rig: target.value === "then" ? "then" : "now" } })
        }}
      >
        {options.map(([option, words]) => (
          <option key={option} value={option}>
            {words}
          </option>
        ))}
      </select>
    </label>
  )
}

function Axis({ draft }: { draft: ReadingDraft }) {
  return (
    <label className="measure-pick">
      <span>{words.about}</span>
      <select
        value={draft.axis}
        onChange={({ target }) => changeDraft("reading", { axis: target.value as ReadingDraft["axis"] })}
      >
        {(["pitch", "yaw", "roll"] as const).map((axis) => (
          <option key={axis} value={axis}>
            {axisWords[axis]}
          </option>
        ))}
      </select>
    </label>
  )
}

function Cant({ read }: { read: boolean }) {
  return (
    <>
      {read && <DraftNumber of="reading" name="cantDeg" field={measureFields.cantDeg} />}
      <label className="check">
        <input type="checkbox" checked={!read} onChange={() => changeDraft("reading", { cantRead: !read })} />
        {words.cantNotRead}
      </label>
    </>
  )
}
