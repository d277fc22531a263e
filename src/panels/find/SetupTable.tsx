import { Fragment, useId, useState } from "react"
import { show, type ShownNumber } from "../../describe/format"
import type { Asked, FoundSetup } from "../../scene/find"
import { useLive } from "../../state/useBench"
import { findSheet } from "../../words/findSheet"
import { turnOf } from "./Scatter"
import { SetupDetail } from "./SetupDetail"
import { TrySetup } from "./TrySetup"

interface Props {
  readonly asked: Asked
  readonly setups: readonly FoundSetup[]
  readonly fits: boolean
  readonly marked: number | null
  readonly open: number | null
  onPoint(index: number | null): void
  onChoose(index: number): void
}

const { setups: words } = findSheet

const columns = [
  { key: "rank", of: (_: FoundSetup, index: number) => index },
  { key: "mass", of: (setup: FoundSetup) => setup.massG },
  { key: "forward", of: (setup: FoundSetup) => setup.centreMm[0] },
  { key: "net", of: (setup: FoundSetup) => setup.netLiftNm },
  { key: "turn", of: (setup: FoundSetup) => turnOf(setup) },
] as const
const quantities = { mass: "mass", forward: "length", net: "moment", turn: "inertia" } as const

/** The setups as a list that can be ordered by any column; an opened one says what to do at the bench. */
export function SetupTable({ asked, setups, fits, marked, open, onPoint, onChoose }: Props) {
  const units = useLive(({ preferences }) => preferences)
  const [by, setBy] = useState<{ readonly column: number; readonly down: boolean }>({ column: 0, down: false })
  const id = useId()
  const { of } = columns[by.column]!
  const order = setups.map((_, index) => index)
  order.sort((a, b) => (of(setups[a]!, a) - of(setups[b]!, b)) * (by.down ? -1 : 1) || a - b)
  const turn = (column: number) => setBy({ column, down: by.column === column ? !by.down : column === 4 })
  const shown = (key: keyof typeof quantities, value: number): ShownNumber => show(value, quantities[key], units)
  return (
    <table className="find-table">
      <caption className="visually-hidden">{words.caption}</caption>
      <thead>
        <tr>
          {columns.map(({ key }, column) => (
            <th
              key={key}
              title={key === "turn" ? words.turn : undefined}
              scope="col"
              aria-sort={by.column !== column ? undefined : by.down ? "descending" : "ascending"}
            >
              <button type="button" onClick={() => turn(column)} aria-label={words.orderBy[key]}>
                {words.heads[key]}
                <span aria-hidden="true" className="find-sort">
                  {by.column !== column ? "" : by.down ? "▾" : "▴"}
                </span>
              </button>
              {key !== "rank" && <span className="find-unit">{shown(key, 0).unit}</span>}
            </th>
          ))}
          <th scope="col">
            <span className="visually-hidden">{words.tryHead}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {order.map((index) => {
          const setup = setups[index]!
          const isOpen = index === open
          return (
            <Fragment key={setup.order}>
              <tr
                data-setup={index}
                data-marked={index === marked || undefined}
                onPointerEnter={(event) => event.pointerType === "mouse" && onPoint(index)}
                onPointerLeave={(event) => event.pointerType === "mouse" && onPoint(null)}
                onFocus={() => onPoint(index)}
                onBlur={() => onPoint(null)}
              >
                <th scope="row">
                  <button
                    type="button"
                    aria-expanded={isOpen}
                    aria-controls={isOpen ? `${id}-${index}` : undefined}
                    aria-label={words.whatToDo(index + 1)}
                    onClick={() => onChoose(index)}
                  >
                    <span className="part-mark" aria-hidden="true" />
                    {index + 1}
                  </button>
                </th>
                {columns.slice(1).map(({ key, of: value }) => (
                  <td key={key}>{shown(key as keyof typeof quantities, value(setup, index)).text}</td>
                ))}
                <td>
                  <TrySetup asked={asked} setup={setup} name={findSheet.trying.setup(index + 1)} fits={fits} />
                </td>
              </tr>
              {isOpen && (
                <tr className="find-detail" id={`${id}-${index}`}>
                  <td colSpan={6}>
                    <SetupDetail setup={setup} hold={asked.question.hold} />
                  </td>
                </tr>
              )}
            </Fragment>
          )
        })}
      </tbody>
    </table>
  )
}
