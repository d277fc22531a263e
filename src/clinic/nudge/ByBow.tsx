import type { Watched } from "./watched"

interface Cell {
  readonly text: string
  /** Unrounded, SI. */
  readonly value: number
}

interface Props {
  /** What the rows are told apart by. */
  readonly heading: string
  /** Key and words of each row. */
  readonly rows: readonly (readonly [key: string, words: string])[]
  /** What the numbers are, before the row's key and the bow: `landing`. */
  readonly figure: string
  readonly bows: readonly Watched[]
  cell(key: string, bow: Watched): Cell
}

/** A small table with a column for each bow. */
export function ByBow({ heading, rows, figure, bows, cell }: Props) {
  return (
    <table className="nudge-table">
      <thead>
        <tr>
          <th scope="col">{heading}</th>
          {bows.map(({ which, name }) => (
            <th key={which} scope="col" data-bow={which}>
              <span className="nudge-mark" aria-hidden="true" />
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([key, words]) => (
          <tr key={key}>
            <th scope="row">{words}</th>
            {bows.map((bow) => {
              const { text, value } = cell(key, bow)
              return (
                <td key={bow.which} data-figure={`${figure}.${key}.${bow.which}`} data-value={value}>
                  {text}
                </td>
              )
            })}
          </tr>
        ))}
      </tbody>
    </table>
  )
}
