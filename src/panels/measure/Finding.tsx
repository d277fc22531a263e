import { unknowns } from "../../core/measure"
import { applyReadings } from "../../commands/measure"
import type { Shown } from "../../describe/format"
import { said } from "../../describe/format"
import { fitWords, knownWords, spreadText, unknownWords } from "../../describe/measureText"
import { readouts, type ReadoutKey } from "../../describe/readouts"
import type { MeasureResult } from "../../scene/measure"
import { figuresOf } from "../../scene/figures"
import { useBench, useLive } from "../../state/useBench"
import { measureSheet } from "../../words/measureSheet"
import { useProblem } from "../Problem"
import { riserSpread } from "./riserSpread"

const { finding: words } = measureSheet

/** Shorter than on the balance sheet: three columns share a narrow one. */
const told: readonly (readonly [ReadoutKey, string])[] = [
  ["massG", words.mass],
  ["centreMm.forward", words.forward],
  ["centreMm.up", words.up],
  ["centreMm.side", words.right],
  ["inertiaGrip.pitch", words.pitch],
  ["inertiaGrip.yaw", words.yaw],
  ["inertiaGrip.roll", words.roll],
]

/** What the readings say, and the button that gives the bow the riser they say it has. */
export function Finding({ result }: { result: MeasureResult }) {
  const bench = useBench()
  const units = useLive(({ preferences }) => preferences)
  const { problem, told: tell } = useProblem()
  const { fit, riser, known, evaluation, spreads } = result
  const figures = figuresOf(evaluation)
  const numbers = [riser.massG, ...riser.centreMm, ...riser.gyrationMm]
  const quantity = (name: string): Shown => (name === "mass" ? "mass" : "length")
  return (
    <section className="finding">
      <h2 className="sheet-heading">{words.heading}</h2>
      {fitWords(result, units).map((sentence) => (
        <p key={sentence} className="finding-words">
          {sentence}
        </p>
      ))}
      {fit.converged && (
        <>
          <table className="finding-table">
            <caption>{words.caption}</caption>
            <tbody>
              {told.map(([key, label]) => {
                const { quantity: what, of } = readouts[key]
                return (
                  <tr key={key} data-measured={key} data-spread={spreads[key]}>
                    <th scope="row">{label}</th>
                    <td>{said(of(figures) ?? Number.NaN, what, units)}</td>
                    <td>{spreadText(spreads[key], what, units)}</td>
                  </tr>
                )
              })}
            </tbody>
          </table>
          <details className="finding-riser">
            <summary>{words.riser}</summary>
            <table className="finding-table">
              <caption className="visually-hidden">{words.riserCaption}</caption>
              <tbody>
                {unknowns.map((name, k) => (
                  <tr key={name} data-unknown={name} data-known={known[name]}>
                    <th scope="row">
                      {unknownWords[name]}
                      <span className="finding-known">{knownWords[known[name]]}</span>
                    </th>
                    <td>{said(numbers[k]!, quantity(name), units)}</td>
                    <td>{known[name] === "yes" && spreadText(riserSpread(fit, name), quantity(name), units)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </details>
          {fit.applied ? (
            <p className="finding-applied">✓ {words.applied}</p>
          ) : (
            <div className="measure-buttons">
              <button
                type="button"
                className="measure-main"
                onClick={() => tell(applyReadings.run(bench), words.nowApplied)}
              >
                {applyReadings.label}
              </button>
              <span className="measure-note">{words.notApplied}</span>
            </div>
          )}
        </>
      )}
      {problem}
    </section>
  )
}
