import { useMemo } from "react"
import { whySentence, whyTable } from "../../describe/drawText"
import { problemText } from "../../describe/problemText"
import { drawChange } from "../../scene/drawChange"
import { useLive } from "../../state/useBench"
import { draw } from "../../words/draw"

const words = draw.why

/** Why the balance is another one at full draw: one line a cause, adding up to the last. */
export function WhyTable() {
  const scene = useLive((state) => state.scene)
  const evaluation = useLive((state) => state.evaluation)
  const units = useLive(({ preferences }) => preferences)
  const change = useMemo(() => drawChange(scene, evaluation), [scene, evaluation])
  const heading = <h2 className="sheet-heading">{words.heading}</h2>
  if (!change.ok) {
    return (
      <section>
        {heading}
        <p className="problem">{problemText({ scene, preferences: units }, change.errors)}</p>
      </section>
    )
  }
  const { lengthUnit, momentUnit, rows } = whyTable(change.value, units)
  return (
    <section>
      {heading}
      <table className="why-table">
        <caption>{words.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{words.cause}</th>
            <th scope="col">
              {words.forward} <span className="why-unit">{lengthUnit}</span>
            </th>
            <th scope="col">
              {words.raises} <span className="why-unit">{momentUnit}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, forward, raising, total }) => (
            <tr key={name} className={total ? "why-total" : undefined}>
              <th scope="row">{name}</th>
              <td>{forward === "" ? words.noMass : forward}</td>
              <td>{raising}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="draw-note">{whySentence(change.value, units)}</p>
    </section>
  )
}
