import type { CardLine } from "../../describe/cardText"

interface Props {
  readonly title: string
  readonly lines: readonly CardLine[]
  /** Said where there is no line. */
  readonly without?: string
}

/** A short table of figures under its title. */
export function CardFigures({ title, lines, without }: Props) {
  return (
    <section className="card-figures">
      <h2>{title}</h2>
      {lines.length === 0 ? (
        <p>{without}</p>
      ) : (
        <table>
          <tbody>
            {lines.map(({ key, label, value, note }) => (
              <tr key={key} data-card={key}>
                <th scope="row">{label}</th>
                <td className="card-number-cell">{value}</td>
                <td>{note}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  )
}
