import { Fragment } from "react"
import type { CardGroup } from "../../describe/cardParts"
import { cardWords } from "../../describe/cardText"

/** The parts list: what is to be set on each, and where it screws in. */
export function CardParts({ groups, unit }: { groups: readonly CardGroup[]; unit: string }) {
  return (
    <section className="card-parts">
      <h2>{cardWords.parts}</h2>
      {groups.length === 0 ? (
        <p>{cardWords.noParts}</p>
      ) : (
        <table>
          <thead>
            <tr>
              <th rowSpan={2} colSpan={2} scope="col">
                {cardWords.part}
              </th>
              <th rowSpan={2} scope="col">
                {cardWords.setting}
              </th>
              <th rowSpan={2} scope="col" className="card-number-cell">
                {cardWords.mass}
              </th>
              <th colSpan={3} scope="colgroup" className="card-over">
                {cardWords.screw}
              </th>
            </tr>
            <tr>
              {cardWords.screwAxes(unit).map((axis) => (
                <th key={axis} scope="col" className="card-number-cell">
                  {axis}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {groups.map(({ key, title, rows }) => (
              <Fragment key={key}>
                <tr className="card-group">
                  <th colSpan={7} scope="rowgroup">
                    {title}
                  </th>
                </tr>
                {rows.map(({ number, name, setting, mass, screw }) => (
                  <tr key={number}>
                    <td className="card-row-number">{number}</td>
                    <td className="card-name">{name}</td>
                    <td>{setting}</td>
                    <td className="card-number-cell">{mass}</td>
                    {(screw ?? ["", "", ""]).map((place, axis) => (
                      // biome-ignore lint/suspicious/noArrayIndexKey: the three axes never change places
                      <td key={axis} className="card-number-cell">
                        {place}
                      </td>
                    ))}
                  </tr>
                ))}
              </Fragment>
            ))}
          </tbody>
        </table>
      )}
    </section>
  )
}
