import { useRef, useState } from "react"
import { partsTable } from "../describe/partsTable"
import { useLive } from "../state/useBench"
import { rig as words } from "../words/rig"
import { AddMenu } from "./rig/AddMenu"
import { useGiveFocus, WantedContext } from "./rig/focus"
import { PartRow } from "./rig/PartRow"
import "./partMark.css"
import "./rig/rig.css"
import { groupsSelector, type RowGroup } from "./rig/structure"
import { roles } from "./rig/tableRoles"

/** The parts table, which is also where parts are added, changed and removed. */
export default function RigSheet() {
  const [select] = useState(groupsSelector)
  const groups = useLive(select)
  // Another selection opens another row, where the keyboard may be wanted.
  useLive((state) => state.selected)
  const table = useRef<HTMLTableElement>(null)
  const wanted = useGiveFocus(table)
  return (
    <WantedContext value={wanted}>
      <table {...roles.table} className="parts" ref={table}>
        <caption className="visually-hidden">{words.about}</caption>
        <thead {...roles.group}>
          <tr {...roles.row} className="part-row part-heads">
            <th {...roles.columnHead} scope="col">
              {words.part}
            </th>
            <th {...roles.columnHead} scope="col" className="part-mass">
              {words.mass}
            </th>
            <th {...roles.columnHead} scope="col" className="part-moment">
              {words.noseDown}
            </th>
            <th {...roles.columnHead} scope="col" className="part-place">
              {words.place}
            </th>
            <th {...roles.columnHead} scope="col" className="part-share">
              {words.share}
            </th>
          </tr>
        </thead>
        {groups.map((group) => (
          <Group key={group.id} group={group} />
        ))}
        <Total />
      </table>
    </WantedContext>
  )
}

function Group({ group }: { group: RowGroup }) {
  const { id, title, rows, adding, onArm } = group
  return (
    <tbody {...roles.group} className="part-group" data-on-arm={onArm || undefined}>
      <tr {...roles.row} className="part-group-head" data-row={id}>
        <th {...roles.rowHead} scope="rowgroup" colSpan={5}>
          <span className="part-group-title">
            {title}
            {rows.length === 0 && <span className="part-group-empty"> {words.empty}</span>}
          </span>
          {adding !== null && <AddMenu adding={adding} title={title} />}
        </th>
      </tr>
      {rows.map((row) => (
        <PartRow key={`${row.address.join("/")} ${row.kind}`} row={row} />
      ))}
    </tbody>
  )
}

function Total() {
  const mass = useLive(({ evaluation, preferences }) => partsTable(evaluation, preferences).total.mass)
  const moment = useLive(({ evaluation, preferences }) => partsTable(evaluation, preferences).total.moment)
  const share = useLive(({ evaluation, preferences }) => partsTable(evaluation, preferences).total.share)
  return (
    <tfoot {...roles.group}>
      <tr {...roles.row} className="part-row part-total">
        <th {...roles.rowHead} scope="row">
          {words.together}
        </th>
        <td {...roles.cell} className="part-mass">
          {mass}
        </td>
        <td {...roles.cell} className="part-moment">
          {moment}
        </td>
        <td {...roles.cell} className="part-place">
          {words.asShown}
        </td>
        <td {...roles.cell} className="part-share">
          {share}
        </td>
      </tr>
    </tfoot>
  )
}
