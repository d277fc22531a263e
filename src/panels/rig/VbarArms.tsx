import { addArm, removeItem } from "../../commands/parts"
import { type Address, valueAt } from "../../scene/address"
import { useBench, useLive } from "../../state/useBench"
import { partWords } from "../../words/partWords"
import { rig as words } from "../../words/rig"
import { OwnedFields } from "../OwnedFields"
import { useProblem } from "../Problem"
import { PairArms } from "./PairArms"

/** The two arms of a V-bar: their angles, and adding or removing one with all it carries. */
export function VbarArms({ path, address }: { path: string; address: Address }) {
  return (
    <>
      {(["left", "right"] as const).map((side) => (
        <ArmFields key={side} side={side} path={`${path}/${side}`} vbar={address} />
      ))}
      <PairArms />
    </>
  )
}

function ArmFields({ side, path, vbar }: { side: "left" | "right"; path: string; vbar: Address }) {
  const bench = useBench()
  const present = useLive(({ scene }) => valueAt(scene, [...vbar, side]) !== undefined)
  const { problem, told } = useProblem()
  const toggle = () => {
    if (!present) return told(addArm.run(bench, { vbar, side }), words.armAdded[side])
    told(
      removeItem.run(bench, { address: [...vbar, side], name: partWords.armTitle(partWords.sides[side]) }),
      words.armRemoved[side],
    )
  }
  return (
    <fieldset className="arm-fields">
      <legend>{words.arms[side]}</legend>
      <OwnedFields owner={path} />
      <button type="button" onClick={toggle}>
        {(present ? words.removeArm : words.addArm)[side]}
      </button>
      {problem}
    </fieldset>
  )
}
