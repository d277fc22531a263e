import { type TargetKey, targetKeys } from "../../scene/suggest"
import { useBench, useLive } from "../../state/useBench"
import { bowSheet } from "../../words/bowSheet"
import { Check } from "../Check"
import { NumberField } from "../NumberField"
import { useProblem } from "../Problem"
import { switchTarget } from "./targets"

/** Each target with a switch; its range stands below while it is on. */
export function TargetFields() {
  return (
    <>
      {targetKeys.map((key) => (
        <TargetField key={key} of={key} />
      ))}
    </>
  )
}

function TargetField({ of: key }: { of: TargetKey }) {
  const bench = useBench()
  const on = useLive(({ scene }) => scene.target[key] !== undefined)
  const { problem, told } = useProblem()
  const title = bowSheet.targets[key]
  const toggle = () => told(switchTarget(bench, key), (on ? bowSheet.targetDropped : bowSheet.targetSet)(title))
  return (
    <fieldset className="target-field">
      <legend>
        <Check checked={on} onSwitch={toggle}>
          {title}
        </Check>
      </legend>
      {on && key === "massMaxG" && <NumberField of="target:massMaxG" label={bowSheet.atMost} />}
      {on && key !== "massMaxG" && (
        <>
          <NumberField of={`target:${key}.from`} label={bowSheet.from} />
          <NumberField of={`target:${key}.to`} label={bowSheet.to} />
        </>
      )}
      {problem}
    </fieldset>
  )
}
