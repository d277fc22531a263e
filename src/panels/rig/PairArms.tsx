import { setPreferences } from "../../commands/preferences"
import { useBench, useLive } from "../../state/useBench"
import { rig as words } from "../../words/rig"
import { Check } from "../Check"

/** Whether what is set on one arm of a V-bar is set on the other. */
export function PairArms() {
  const bench = useBench()
  const paired = useLive(({ preferences }) => preferences.pairArms)
  return (
    <Check checked={paired} onSwitch={() => setPreferences.run(bench, { pairArms: !paired })}>
      {words.pairArms}
    </Check>
  )
}
