import { RECHECK, rigText } from "../../describe/findText"
import { said } from "../../describe/format"
import { rigChanges } from "../../describe/rigChanges"
import type { FindQuestion, FoundSetup } from "../../scene/find"
import { useLive } from "../../state/useBench"

/** What a setup is made of, its figures, and what to do with the screwdriver to get there from the present rig. */
export function SetupDetail({ setup, hold }: { setup: FoundSetup; hold: FindQuestion["hold"] }) {
  const units = useLive(({ preferences }) => preferences)
  const scene = useLive((state) => state.scene)
  const changes = rigChanges(scene, setup.rig, units)
  const length = (value: number) => said(value, "length", units)
  const inertia = (value: number) => said(value, "inertia", units)
  const [forward, up, right] = setup.centreMm
  return (
    <>
      <h3>From the rig as it is</h3>
      {changes.length === 0 ? (
        <p>Nothing to do: it is that rig.</p>
      ) : (
        <ul className="find-changes">
          {changes.map(({ where, what }) => (
            <li key={where}>
              <strong>{where}</strong>
              <ul>
                {what.map((each) => (
                  <li key={each}>{each}</li>
                ))}
              </ul>
            </li>
          ))}
        </ul>
      )}
      {changes.length > 0 && <p>{RECHECK}</p>}
      <p className="find-note">
        {rigText(setup.rig, units)}. Balance {hold === "drawn" ? "at full draw" : "at brace"} {length(forward)} forward,{" "}
        {length(up)} up, {length(right)} to the right. Pitch {inertia(setup.pitch)}, yaw {inertia(setup.yaw)}, roll{" "}
        {inertia(setup.roll)}.
        {setup.reachForwardMm !== null &&
          setup.reachSideMm !== null &&
          ` The rig reaches ${length(setup.reachForwardMm)} forward and ${length(setup.reachSideMm)} to a side.`}
      </p>
    </>
  )
}
