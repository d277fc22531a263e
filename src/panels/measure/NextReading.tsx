import { said } from "../../describe/format"
import { nowWords, pointTitle } from "../../describe/measureText"
import type { NextReadings, NextReading as Next } from "../../scene/measure"
import { useLive } from "../../state/useBench"
import { measureSheet } from "../../words/measureSheet"
import { changeDraft } from "./drafts"

const { next: words } = measureSheet

const SHOWN = 3

/** Of all that could be read next, what would pin the balance point down best. `read`: whether any reading counts. */
export function NextReading({ next, read }: { next: NextReadings; read: boolean }) {
  const scene = useLive((state) => state.scene)
  const units = useLive(({ preferences }) => preferences)
  const title = ({ point }: Next) => (point === null ? words.weigh : words.hangFrom(pointTitle(scene, point)))
  return (
    <section>
      <h2 className="sheet-heading">{words.heading}</h2>
      <p className="measure-note">
        {nowWords(next, read, units)} {words.wouldMake}
      </p>
      <ul className="next-readings">
        {next.best.slice(0, SHOWN).map((each) => (
          <li key={each.point?.key ?? "scale"}>
            <span>
              <strong>{title(each)}</strong>
              <span className="measure-note">{words.to(said(each.spreadMm, "length", units))}</span>
            </span>
            <button
              type="button"
              onClick={() =>
                changeDraft("reading", {
                  kind: each.kind,
                  on: "rigged",
                  editing: null,
                  ...(each.point === null ? {} : { point: each.point.key }),
                })
              }
            >
              {words.setUp}
              <span className="visually-hidden"> {title(each)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
