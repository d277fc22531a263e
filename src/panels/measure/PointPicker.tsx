import { useEffect, useId, useState } from "react"
import { placeText, pointTitle } from "../../describe/measureText"
import { placeMm } from "../../scene/fields"
import type { NamedPoint } from "../../scene/measure"
import type { Vec3 } from "../../core/solids"
import { askForPoint } from "../../state/picking"
import { useBench, useLive } from "../../state/useBench"
import { measureSheet } from "../../words/measureSheet"
import { DraftNumber } from "./DraftFields"
import { changeDraft, useDraft } from "./drafts"
import { OWN_POINT } from "./reading"

const { point: words } = measureSheet

/** Where the bow hangs: one of its named places, a place tapped in the picture, or a typed one. */
export function PointPicker({ points, label }: { points: readonly NamedPoint[]; label: string }) {
  const bench = useBench()
  const id = useId()
  const scene = useLive((state) => state.scene)
  const units = useLive((state) => state.preferences)
  const { point } = useDraft("reading")
  const [picking, setPicking] = useState(false)
  const named = points.find(({ key }) => key === point)
  const take = (at: Vec3) => {
    setPicking(false)
    const mm = at.map((metres) => Math.round(metres * 1e4) / 10) as [number, number, number]
    ownPlace(mm)
    bench.say(words.taken(placeText(mm, units)))
  }
  const ask = (wanted: boolean) => {
    setPicking(wanted)
    askForPoint(wanted ? take : null)
  }
  // Whoever leaves the sheet taps to choose parts again.
  useEffect(() => () => askForPoint(null), [])
  return (
    <div className="measure-point">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={named === undefined ? OWN_POINT : point}
        onChange={({ target }) => changeDraft("reading", { point: target.value })}
      >
        {points.map((each) => (
          <option key={each.key} value={each.key}>
            {pointTitle(scene, each)}
          </option>
        ))}
        <option value={OWN_POINT}>{words.another}</option>
      </select>
      {named !== undefined && <p className="measure-note">{words.fromGrip(placeText(named.atMm, units))}</p>}
      {named === undefined && (
        <>
          <DraftNumber of="reading" name="at0" field={placeMm} label={words.forward} />
          <DraftNumber of="reading" name="at1" field={placeMm} label={words.above} />
          <DraftNumber of="reading" name="at2" field={placeMm} label={words.right} />
        </>
      )}
      <button type="button" aria-pressed={picking} onClick={() => ask(!picking)}>
        {picking ? words.tapping : words.tap}
      </button>
    </div>
  )
}

/** Puts a place in file units into the draft, as typed. */
export function ownPlace([at0, at1, at2]: readonly [number, number, number]): void {
  changeDraft("reading", { point: OWN_POINT })
  changeDraftValues({ at0, at1, at2 })
}

export function changeDraftValues(changes: Readonly<Record<string, number>>): void {
  changeDraft("reading", (draft) => {
    const texts = Object.fromEntries(Object.entries(draft.texts).filter(([name]) => !(name in changes)))
    return { texts, values: { ...draft.values, ...changes } }
  })
}
