import { type TargetKey, targetKeys } from "../../scene/suggest"
import { useBench, useLive } from "../../state/useBench"
import { Check } from "../Check"
import { NumberField } from "../NumberField"
import { useProblem } from "../Problem"
import { switchTarget, targetTitles } from "./targets"

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
  const toggle = () =>
    told(switchTarget(bench, key), `Target for ${targetTitles[key].toLowerCase()} ${on ? "dropped" : "set"}`)
  return (
    <fieldset className="target-field">
      <legend>
        <Check checked={on} onSwitch={toggle}>
          {targetTitles[key]}
        </Check>
      </legend>
      {on && key === "massMaxG" && <NumberField of="target:massMaxG" label="At most" />}
      {on && key !== "massMaxG" && (
        <>
          <NumberField of={`target:${key}.from`} label="From" />
          <NumberField of={`target:${key}.to`} label="To" />
        </>
      )}
      {problem}
    </fieldset>
  )
}
