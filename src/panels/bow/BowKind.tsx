import { setBowKind, setStringWrap } from "../../commands/bow"
import { useBench, useLive } from "../../state/useBench"
import { bowSheet } from "../../words/bowSheet"
import { Check } from "../Check"
import { Choice } from "../Choice"
import { Handedness } from "../Handedness"
import { useProblem } from "../Problem"

/** Recurve or compound, right- or left-handed. */
export function BowKind() {
  const bench = useBench()
  const kind = useLive(({ scene }) => scene.bow.kind)
  const { problem, told } = useProblem()
  return (
    <>
      <Choice
        name={bowSheet.kind}
        value={kind}
        options={[
          ["recurve", bowSheet.kinds.recurve],
          ["compound", bowSheet.kinds.compound],
        ]}
        onChoose={(next) => told(setBowKind.run(bench, { kind: next }))}
      />
      <p className="sheet-hint">{bowSheet.kindHint}</p>
      {problem}
      <Handedness />
    </>
  )
}

/** For recurves only: near brace the string of a strongly curved limb lies on it. */
export function StringWrap() {
  const bench = useBench()
  const wrap = useLive(({ scene }) => (scene.bow.kind === "recurve" ? scene.bow.stringWrap : null))
  const { problem, told } = useProblem()
  if (wrap === null) return null
  return (
    <>
      <Check checked={wrap} onSwitch={() => told(setStringWrap.run(bench, { wrap: !wrap }))}>
        {bowSheet.wrap}
      </Check>
      {problem}
    </>
  )
}
