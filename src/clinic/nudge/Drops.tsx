import { DROP_DECIMALS, turnText } from "../../describe/nudgeText"
import { nudgeWords } from "../../describe/nudgeWords"
import { anglesAt } from "../../scene/nudge"
import { lastingOf, type Watched } from "./watched"

/** When the drop is read, s. */
const TIMES = [0.1, 0.2, 0.3, 0.4, 0.5]

/** How far each front is down at a few times after the hand has opened. */
export function Drops({ bows }: { readonly bows: readonly Watched[] }) {
  const end = lastingOf(bows[0]!)
  return (
    <section>
      <h2 className="sheet-heading">{nudgeWords.drops}</h2>
      <table className="nudge-landings">
        <thead>
          <tr>
            <th scope="col">{nudgeWords.after}</th>
            {bows.map(({ which, name }) => (
              <th key={which} scope="col" data-bow={which}>
                <span className="nudge-mark" aria-hidden="true" />
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {TIMES.filter((time) => time <= end).map((time) => (
            <tr key={time}>
              <th scope="row">{time.toFixed(1)}&nbsp;s</th>
              {bows.map(({ which, trace }) => {
                const [, , pitch] = anglesAt(trace, time)
                return (
                  <td key={which} data-figure={`drop.${time}.${which}`} data-value={pitch}>
                    {turnText(pitch, "pitch", DROP_DECIMALS)}
                  </td>
                )
              })}
            </tr>
          ))}
        </tbody>
      </table>
      <p className="hills-note">{nudgeWords.dropFormula}</p>
    </section>
  )
}
