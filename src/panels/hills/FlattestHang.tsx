import { useMemo, useRef, useState } from "react"
import { hangPlaceText, rangeProblemText } from "../../describe/hillText"
import { partTitle } from "../../describe/partNames"
import { type Address, valueAt } from "../../scene/address"
import { elementFields, type NumberField } from "../../scene/fields"
import { placesFor, swingMotions, type TryRange } from "../../scene/hills"
import type { PartOf, Scene } from "../../scene/schema"
import { newElement } from "../../scene/templates"
import { useLive } from "../../state/useBench"
import { hills } from "../../words/hills"
import "../choice.css"
import { HangAnswers, HangSummary } from "./HangAnswers"
import { PlainNumber } from "./PlainNumber"
import { useHangSearch } from "./useHangSearch"

const words = hills.flattest

/** What is hung: a new weight, all those on the rig as one kind, or the one at a path. */
const NEW = "new"
const ALL = "all"

/** Looks through places, stems and bobs for the flattest net lift on slopes. */
export function FlattestHang() {
  const scene = useLive((state) => state.scene)
  const swings = useMemo(() => swingMotions(scene), [scene])
  const [wanted, setWanted] = useState<string | null>(null)
  const [stem, setStem] = useState<TryRange>({ from: 50, to: 300, step: 10 })
  const [bob, setBob] = useState<TryRange>({ from: 50, to: 400, step: 10 })
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set())
  const bar = useRef<HTMLProgressElement>(null)
  const units = useLive(({ preferences }) => preferences)
  const { searching, answered, errors, ask, cancel } = useHangSearch(({ tried, total }) => {
    if (bar.current === null) return
    bar.current.max = total
    bar.current.value = tried
  })
  const options = [
    ...(swings.length > 1 ? [[ALL, words.all]] : []),
    ...swings.map(({ path }) => [path, partTitle(scene, path)]),
    [NEW, words.fresh],
  ] as [string, string][]
  const what = options.some(([value]) => value === wanted) ? wanted! : options[0]![0]
  const { moving, swing } = useMemo(() => questionOf(scene, swings, what), [scene, swings, what])
  const places = useMemo(() => placesFor(scene, moving), [scene, moving])
  const tried = places.filter(({ path }) => !left.has(path)).map(({ path }) => path)
  const start = () => {
    const ranges = { stemLengthMm: stem, bobMassG: bob }
    ask(scene, { swing, moving, ranges, places: tried })
  }
  const toggle = (path: string) => {
    const next = new Set(left)
    if (!next.delete(path)) next.add(path)
    setLeft(next)
  }
  return (
    <section>
      <h2 className="sheet-heading">{words.heading}</h2>
      <p className="hills-note">{words.note}</p>
      <label className="hills-pick">
        <span>{words.what}</span>
        <select value={what} onChange={(event) => setWanted(event.target.value)}>
          {options.map(([value, name]) => (
            <option key={value} value={value}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <Range name={words.stem} field={elementFields.swing.stemLengthMm} range={stem} onChange={setStem} />
      <Range name={words.bob} field={elementFields.swing.bobMassG} range={bob} onChange={setBob} />
      <fieldset className="checks hills-places">
        <legend>{words.where}</legend>
        {places.map((place) => (
          <label key={place.path} className="check">
            <input type="checkbox" checked={!left.has(place.path)} onChange={() => toggle(place.path)} />
            {hangPlaceText(place)}
          </label>
        ))}
        {places.length === 0 && <p className="hills-note">{words.noMount}</p>}
      </fieldset>
      <div className="hills-buttons">
        <button
          type="button"
          aria-disabled={searching || tried.length === 0}
          onClick={() => {
            if (!searching && tried.length > 0) start()
          }}
        >
          {words.search}
        </button>
        {searching && (
          <>
            <progress ref={bar} aria-label={words.tries} />
            <button type="button" onClick={cancel}>
              {words.cancel}
            </button>
          </>
        )}
      </div>
      {errors.length > 0 && (
        <p className="problem" role="alert">
          {errors.map((error) => rangeProblemText(error, units)).join(" ")}
        </p>
      )}
      <div role="status">{answered !== null && <HangSummary answer={answered.answer} />}</div>
      {answered !== null && <HangAnswers {...answered} />}
    </section>
  )
}

function questionOf(
  scene: Scene,
  swings: readonly { path: string; address: Address }[],
  what: string,
): { moving: Address[]; swing: PartOf<"swing"> } {
  const moved = what === NEW ? [] : swings.filter(({ path }) => what === ALL || path === what)
  const first = moved[0]
  const swing = first === undefined ? newElement.swing : valueAt(scene, first.address)
  return { moving: moved.map(({ address }) => address), swing: swing as PartOf<"swing"> }
}

interface RangeProps {
  readonly name: string
  readonly field: NumberField
  readonly range: TryRange
  onChange(range: TryRange): void
}

function Range({ name, field, range, onChange }: RangeProps) {
  const stepField: NumberField = { ...field, min: 0.1 }
  return (
    <fieldset className="hills-range">
      <legend>{name}</legend>
      <PlainNumber
        label={words.from}
        field={field}
        value={range.from}
        onChange={(from) => onChange({ ...range, from })}
      />
      <PlainNumber label={words.to} field={field} value={range.to} onChange={(to) => onChange({ ...range, to })} />
      <PlainNumber
        label={words.step}
        field={stepField}
        value={range.step}
        onChange={(step) => onChange({ ...range, step })}
      />
    </fieldset>
  )
}
