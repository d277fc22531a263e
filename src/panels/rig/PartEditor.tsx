import { setBoxed } from "../../commands/accessories"
import { duplicateItem, moveItem, removeItem, setJoint } from "../../commands/parts"
import { valueAt } from "../../scene/address"
import type { Result } from "../../scene/errors"
import type { PartOf } from "../../scene/schema"
import { useBench, useLive } from "../../state/useBench"
import { rig as words } from "../../words/rig"
import { Check } from "../Check"
import { Choice } from "../Choice"
import { OwnedFields } from "../OwnedFields"
import { useProblem } from "../Problem"
import { nameOf, pathAt, useWanted } from "./focus"
import { NameField } from "./NameField"
import type { RowPlace } from "./structure"
import { VbarArms } from "./VbarArms"

/** Everything one can do to one part: its name, numbers and what belongs to its kind, then move, copy, remove. */
export function PartEditor({ row, kindName }: { row: RowPlace; kindName: string }) {
  const given = row.kind === "bow"
  return (
    <div className="part-editor">
      {!given && <NameField address={row.address} fallback={row.kind === "accessory" ? null : kindName} />}
      <OwnedFields owner={row.path} />
      {row.kind === "swing" && <SwingJoint row={row} />}
      {row.kind === "accessory" && <BoxSwitch row={row} />}
      {row.kind === "vbar" && <VbarArms path={row.path} address={row.address} />}
      {!given && <Actions row={row} />}
    </div>
  )
}

function SwingJoint({ row }: { row: RowPlace }) {
  const bench = useBench()
  const joint = useLive(({ scene }) => (valueAt(scene, row.address) as Partial<PartOf<"swing">> | undefined)?.joint)
  if (joint === undefined) return null
  return (
    <Choice
      name={words.hangs}
      value={joint}
      options={[
        ["hinge", words.joints.hinge],
        ["ball", words.joints.ball],
      ]}
      onChoose={(next) => setJoint.run(bench, { address: row.address, joint: next })}
    />
  )
}

function BoxSwitch({ row }: { row: RowPlace }) {
  const bench = useBench()
  const boxed = useLive(({ scene }) => scene.accessories[row.index]?.sizeMm !== undefined)
  return (
    <Check checked={boxed} onSwitch={() => setBoxed.run(bench, { index: row.index, boxed: !boxed })}>
      {words.boxed}
    </Check>
  )
}

function Actions({ row }: { row: RowPlace }) {
  const bench = useBench()
  const want = useWanted()
  const { problem, told } = useProblem()
  const { address, index, count } = row
  const list = address.slice(0, -1)

  /** Runs a command; on success what now stands at `at` is selected, or nothing, and the keyboard goes on there. */
  const act = (result: Result<void>, said: string, after: () => void) => {
    if (told(result, said).ok) after()
  }
  const move = (by: 1 | -1) => {
    const to = index + by
    if (to < 0 || to >= count) return
    const name = nameOf(bench, row.path)
    act(moveItem.run(bench, { address, by, name }), (by < 0 ? words.movedUp : words.movedDown)(name), () => {
      const path = pathAt(bench, [...list, to])
      if (path === null) return
      want({ id: path, control: by < 0 ? "up" : "down" })
      bench.setView({ selected: path })
    })
  }
  const duplicate = () => {
    const name = nameOf(bench, row.path)
    act(duplicateItem.run(bench, { address, name }), words.duplicated(name), () => {
      const path = pathAt(bench, [...list, index + 1])
      if (path === null) return
      want({ id: path, control: "name" })
      bench.setView({ selected: path })
    })
  }
  const remove = () => {
    const name = nameOf(bench, row.path)
    act(removeItem.run(bench, { address, name }), words.removed(name), () => {
      const next = pathAt(bench, address) ?? pathAt(bench, [...list, index - 1])
      const group = row.kind === "accessory" ? "accessories" : row.path.slice(0, row.path.lastIndexOf("/"))
      want(next === null ? { id: group, control: "add" } : { id: next, control: "name" })
      bench.setView({ selected: null, hovered: null })
    })
  }

  return (
    <div className="part-actions">
      <button type="button" data-control="up" aria-disabled={index === 0} onClick={() => move(-1)}>
        {words.up}
      </button>
      <button type="button" data-control="down" aria-disabled={index === count - 1} onClick={() => move(1)}>
        {words.down}
      </button>
      <button type="button" onClick={duplicate}>
        {words.duplicate}
      </button>
      <button type="button" onClick={remove}>
        {words.remove}
      </button>
      {problem}
    </div>
  )
}
