import { setPreferences } from "../../commands/bench"
import { useBench, useLive } from "../../state/useBench"

/** Whether what is set on one arm of a V-bar is set on the other. */
export function PairArms() {
  const bench = useBench()
  const paired = useLive(({ preferences }) => preferences.pairArms)
  return (
    <label className="check">
      <input type="checkbox" checked={paired} onChange={() => setPreferences.run(bench, { pairArms: !paired })} />
      Change both arms of a V-bar together
    </label>
  )
}
