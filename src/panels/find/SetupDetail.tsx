import { RECHECK, rigText } from "../../describe/findText"
import { said } from "../../describe/format"
import { rigChanges } from "../../describe/rigChanges"
import type { FindQuestion, FoundSetup } from "../../scene/find"
import { useLive } from "../../state/useBench"
import { findSheet } from "../../words/findSheet"

const { detail: words } = findSheet

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
      <h3>{words.heading}</h3>
      {changes.length === 0 ? (
        <p>{words.nothing}</p>
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
        {`${rigText(setup.rig, units)}. `}
        {(hold === "drawn" ? words.drawn : words.brace)(length(forward), length(up), length(right))}{" "}
        {words.turn(inertia(setup.pitch), inertia(setup.yaw), inertia(setup.roll))}
        {setup.reachForwardMm !== null &&
          setup.reachSideMm !== null &&
          ` ${words.reach(length(setup.reachForwardMm), length(setup.reachSideMm))}`}
      </p>
    </>
  )
}
