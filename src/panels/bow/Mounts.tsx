import { select } from "../../commands/bench"
import { addMount } from "../../commands/bow"
import { removeItem } from "../../commands/parts"
import { mountNames } from "../../scene/mountNames"
import type { MountName } from "../../scene/schema"
import { useBench, useLive } from "../../state/useBench"
import { OwnedFields } from "../OwnedFields"
import { useProblem } from "../Problem"

/** Where chains are screwed into the riser, and which way they point there. */
export function Mounts() {
  return (
    <>
      <p className="sheet-hint">While you are at a mount here, it can be dragged in the picture too.</p>
      {mountNames.map((mount) => (
        <MountFields key={mount} mount={mount} />
      ))}
    </>
  )
}

function MountFields({ mount }: { mount: MountName }) {
  const bench = useBench()
  const present = useLive(({ scene }) => scene.mounts[mount] !== undefined)
  const used = useLive(({ scene }) => scene.rig.some((entry) => entry.mount === mount))
  const { problem, told } = useProblem()
  const toggle = () => {
    const name = `${mount} mount`
    if (!present) return told(addMount.run(bench, { mount }), `${name} added`)
    told(removeItem.run(bench, { address: ["mounts", mount], name }), `${name} removed`)
  }
  return (
    <fieldset className="mount-fields" onFocus={() => present && select.run(bench, `mounts/${mount}`)}>
      <legend>{`${mount.charAt(0).toUpperCase()}${mount.slice(1)} mount`}</legend>
      <OwnedFields owner={`mounts/${mount}`} />
      {used ? (
        <p className="sheet-hint">Carries a part of the rig.</p>
      ) : (
        <button type="button" onClick={toggle}>
          {present ? `Remove the ${mount} mount` : `Add a ${mount} mount`}
        </button>
      )}
      {problem}
    </fieldset>
  )
}
