import { Fragment } from "react"
import type { CardGroup } from "../../describe/cardParts"
import { setupCard } from "../../words/setupCard"

/** The parts list: what is to be set on each, and where it screws in. */
export function CardParts({ groups, unit }: { groups: readonly CardGroup[]; unit: string }) {
  return (
    <section className="card-parts">
      <h2>{setupCard.parts}</h2>
      {groups.length === 0 ? (
        <p>{setupCard.noParts}</p>
      ) : (
        <table>
          <thead>
            <tr>
              <th rowSpan={2} colSpan={2} scope="col">
                {setupCard.part}
              </th>
              <th rowSpan={2} scope="col">
                {setupCard.setting}
              </th>
              <th rowSpan={2} scope="col" className="card-number-cell">
                {setupCard.mass}
              </th>
              <th colSpan={3} scope="colgroup" className="card-over">
                {setupCard.screw}
              </th>
            </tr>
            <tr>
              {[setupCard.ahead, setupCard.up, setupCard.right(unit)].map((axis) => (
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
