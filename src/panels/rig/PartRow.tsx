import { useEffect, useId, useRef } from "react"
import { hover, select } from "../../commands/bench"
import { partNames } from "../../describe/partNames"
import { type PartLine, partsTable } from "../../describe/partsTable"
import type { BenchState } from "../../state/bench"
import { useBench, useLive } from "../../state/useBench"
import { PartEditor } from "./PartEditor"
import type { RowPlace } from "./structure"
import { roles } from "./tableRoles"

const line = ({ evaluation, preferences }: BenchState, path: string): PartLine | undefined =>
  partsTable(evaluation, preferences).lines.get(path)

/** One part: its numbers, and its editor while it is the selected one. */
export function PartRow({ row }: { row: RowPlace }) {
  const bench = useBench()
  const { path } = row
  const id = useId()
  const element = useRef<HTMLTableRowElement>(null)
  const name = useLive(({ scene }) => partNames(scene).get(path)?.short ?? path)
  const open = useLive(({ selected }) => selected === path)
  const hovered = useLive((state) => state.hovered === path)

  useEffect(() => {
    if (open) element.current?.scrollIntoView({ block: "nearest" })
  }, [open])

  const point = () => void hover.run(bench, path)
  const leave = () => void hover.run(bench, null)
  return (
    <>
      <tr
        {...roles.row}
        ref={element}
        className="part-row"
        data-row={path}
        data-open={open || undefined}
        data-hovered={hovered || undefined}
        onPointerEnter={point}
        onPointerLeave={leave}
        onFocus={point}
        onBlur={leave}
      >
        <th {...roles.rowHead} scope="row">
          <button
            type="button"
            className="part-name"
            data-control="name"
            aria-expanded={open}
            aria-controls={open ? id : undefined}
            onClick={() => void select.run(bench, open ? null : path)}
          >
            <span className="part-mark" aria-hidden="true" />
            {name}
          </button>
        </th>
        <Cell className="part-mass" path={path} of="mass" />
        <Cell className="part-moment" path={path} of="moment" />
        <Cell className="part-place" path={path} of="place" />
        <td {...roles.cell} className="part-share">
          <Bar path={path} />
          <Text path={path} of="share" />
        </td>
      </tr>
      {open && (
        <tr {...roles.row} className="part-open" id={id} data-row={path}>
          <td {...roles.cell} colSpan={5}>
            <PartEditor row={row} kindName={name} />
          </td>
        </tr>
      )}
    </>
  )
}

type Column = "mass" | "moment" | "place" | "share"

const Cell = ({ className, path, of }: { className: string; path: string; of: Column }) => (
  <td {...roles.cell} className={className}>
    <Text path={path} of={of} />
  </td>
)

/** Renders only when what it shows changes. */
function Text({ path, of }: { path: string; of: Column }) {
  return useLive((state) => line(state, path)?.[of] ?? "")
}

/** To the right of the middle what lowers the front, to the left what raises it; the number beside it says the same. */
function Bar({ path }: { path: string }) {
  const bar = useLive((state) => (line(state, path)?.bar ?? 0).toFixed(2))
  const share = Number(bar) * 50
  const style = share < 0 ? { right: "50%", width: `${-share}%` } : { left: "50%", width: `${share}%` }
  return (
    <span className="part-bar" aria-hidden="true">
      <span style={style} />
    </span>
  )
}
