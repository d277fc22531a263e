import { useMemo } from "react"
import { whySentence, whyTable } from "../../describe/drawText"
import { problemText } from "../../describe/problemText"
import { drawChange } from "../../scene/drawChange"
import { useLive } from "../../state/useBench"

/** Why the balance is another one at full draw: one line a cause, adding up to the last. */
export function WhyTable() {
  const scene = useLive((state) => state.scene)
  const evaluation = useLive((state) => state.evaluation)
  const units = useLive(({ preferences }) => preferences)
  const change = useMemo(() => drawChange(scene, evaluation), [scene, evaluation])
  const heading = <h2 className="sheet-heading">Why the balance changes when drawn</h2>
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
        <caption>Held level and upright. The lines add up to the last one.</caption>
        <thead>
          <tr>
            <th scope="col">Cause</th>
            <th scope="col">
              Balance point forward, <span className="why-unit">{lengthUnit}</span>
            </th>
            <th scope="col">
              Raises the front, <span className="why-unit">{momentUnit}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, forward, raising, total }) => (
            <tr key={name} className={total ? "why-total" : undefined}>
              <th scope="row">{name}</th>
              <td>{forward === "" ? "no mass moves" : forward}</td>
              <td>{raising}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="draw-note">{whySentence(change.value, units)}</p>
    </section>
  )
}
