import { useMemo, useState } from "react"
import { comparedRows, triedFigures, triedTitle } from "../../describe/logText"
import type { Scene, Tried } from "../../scene/schema"
import { useLive } from "../../state/useBench"
import { triedSetups } from "../../words/triedSetups"

const { compared: words } = triedSetups

/** The rig that is on the bench, among the places of the log. */
const NOW = -1

/** Any two setups beside each other, on the bow as it is now and held as it is. */
export function CompareSetups({ log }: { log: readonly Tried[] }) {
  const scene = useLive((state) => state.scene)
  const units = useLive(({ preferences }) => preferences)
  const [first, setFirst] = useState(0)
  const [second, setSecond] = useState(NOW)
  const rigAt = (place: number): Scene["rig"] => (place === NOW ? scene.rig : (log[place]?.rig ?? scene.rig))
  const [firstRig, secondRig] = [rigAt(first), rigAt(second)]
  const rows = useMemo(() => {
    const [a, b] = [triedFigures(scene, firstRig), triedFigures(scene, secondRig)]
    return a === null || b === null ? [] : comparedRows(a, b, units)
  }, [scene, firstRig, secondRig, units])
  return (
    <div className="compare-setups">
      <Pick label={words.first} log={log} value={first} onPick={setFirst} />
      <Pick label={words.second} log={log} value={second} onPick={setSecond} />
      <table className="finding-table">
        <caption className="visually-hidden">{words.caption}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="visually-hidden">{words.number}</span>
            </th>
            <th scope="col">{nameOf(log, first)}</th>
            <th scope="col">{nameOf(log, second)}</th>
            <th scope="col">{words.change}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key}>
              <th scope="row">{row.label}</th>
              <td>{row.first}</td>
              <td>{row.second}</td>
              <td>{row.change}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

const nameOf = (log: readonly Tried[], place: number): string =>
  place === NOW || log[place] === undefined ? words.now : `${place + 1}`

interface PickProps {
  readonly label: string
  readonly log: readonly Tried[]
  readonly value: number
  onPick(place: number): void
}

function Pick({ label, log, value, onPick }: PickProps) {
  return (
    <label className="measure-pick">
      <span>{label}</span>
      <select value={log[value] === undefined ? NOW : value} onChange={({ target }) => onPick(Number(target.value))}>
        <option value={NOW}>{words.rigNow}</option>
        {log.map((tried, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a setup is known by its place in the file's list
          <option key={place} value={place}>
            {triedTitle(tried, place)}
          </option>
        ))}
      </select>
    </label>
  )
}
