import { select } from "../../commands/bench"
import { addMount } from "../../commands/bow"
import { removeItem } from "../../commands/parts"
import { mountNames } from "../../scene/mountNames"
import type { MountName } from "../../scene/schema"
import { useBench, useLive } from "../../state/useBench"
import { bowSheet } from "../../words/bowSheet"
import { edits } from "../../words/edits"
import { partWords } from "../../words/partWords"
import { OwnedFields } from "../OwnedFields"
import { useProblem } from "../Problem"

/** Where chains are screwed into the riser, and which way they point there. */
export function Mounts() {
  return (
    <>
      <p className="sheet-hint">{bowSheet.mountsHint}</p>
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
    const name = edits.mounts[mount]
    if (!present) return told(addMount.run(bench, { mount }), edits.added(name))
    told(removeItem.run(bench, { address: ["mounts", mount], name }), edits.removed(name))
  }
  return (
    <fieldset className="mount-fields" onFocus={() => present && select.run(bench, `mounts/${mount}`)}>
      <legend>{partWords.mountTitles[mount]}</legend>
      <OwnedFields owner={`mounts/${mount}`} />
      {used ? (
        <p className="sheet-hint">{bowSheet.mountUsed}</p>
      ) : (
        <button type="button" onClick={toggle}>
          {(present ? bowSheet.removeMount : bowSheet.addMount)[mount]}
        </button>
      )}
      {problem}
    </fieldset>
  )
}
