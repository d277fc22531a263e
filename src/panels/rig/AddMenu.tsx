import { useState } from "react"
import { addAccessory } from "../../commands/accessories"
import { addChain, addPart } from "../../commands/parts"
import { kindWords } from "../../describe/partNames"
import { chainAt } from "../../scene/address"
import type { Result } from "../../scene/errors"
import type { Element } from "../../scene/schema"
import { useBench } from "../../state/useBench"
import { rig as words } from "../../words/rig"
import { useProblem } from "../Problem"
import { pathAt, useWanted } from "./focus"
import type { Adding } from "./structure"

/** "Add" under a heading: opens the kinds of part that can stand there. An accessory is added at once. */
export function AddMenu({ adding, title }: { adding: Adding; title: string }) {
  const bench = useBench()
  const want = useWanted()
  const [open, setOpen] = useState(false)
  const { problem, told } = useProblem()

  const done = (
    result: Result<void>,
    address: readonly (string | number)[],
    what: string,
    control: "name" | "rename",
  ) => {
    if (!told(result, words.added(what, title)).ok) return
    setOpen(false)
    const path = pathAt(bench, address)
    if (path === null) return
    want({ id: path, control })
    bench.setView({ selected: path })
  }

  const add = (part: Element["part"]) => {
    if (adding.to === "chain") {
      const at = chainAt(bench.store.getState().scene, adding.chain)?.length ?? 0
      done(addPart.run(bench, { chain: adding.chain, part }), [...adding.chain, at], kindWords[part], "name")
    } else if (adding.to === "mount") {
      const result = addChain.run(bench, { mount: adding.mount, part })
      const { rig } = bench.store.getState().scene
      const entry = rig.findIndex(({ mount }) => mount === adding.mount)
      done(result, ["rig", entry, "chain", (rig[entry]?.chain.length ?? 1) - 1], kindWords[part], "name")
    }
  }

  const press = () => {
    if (adding.to !== "accessories") return setOpen(!open)
    const at = bench.store.getState().scene.accessories.length
    done(addAccessory.run(bench, { name: words.accessory }), ["accessories", at], words.accessory, "rename")
  }

  return (
    <>
      <button
        type="button"
        className="add-button"
        data-control="add"
        aria-expanded={adding.to === "accessories" ? undefined : open}
        aria-label={words.addTo(title)}
        onClick={press}
        onKeyDown={(event) => event.key === "Escape" && setOpen(false)}
      >
        {words.add}
      </button>
      {open && adding.to !== "accessories" && (
        <fieldset className="add-kinds">
          <legend className="visually-hidden">{words.addWhat(title)}</legend>
          {adding.kinds.map((kind) => (
            <button key={kind} type="button" onClick={() => add(kind)}>
              {kindWords[kind]}
            </button>
          ))}
        </fieldset>
      )}
      {problem}
    </>
  )
}
