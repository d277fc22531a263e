import { useState } from "react"
import { useStore } from "./useStore"
import { type KitSection as Section, kitSections, piecesIn } from "../../scene/kit"
import type { KitBox } from "../../state/kitBox"
import { useBench } from "../../state/useBench"
import { NameField } from "./NameField"
import { newPiece } from "./newPieces"
import { PieceRow } from "./PieceRow"
import { plans, withPieces } from "./pieces"
import { ShippedKits } from "./ShippedKits"

/** What the page does with a kit's files. */
export interface KitFiles {
  pick(): void
  save(as: "json" | "csv"): void
  /** The kits that come with the bench. */
  shipped(): Promise<readonly { readonly id: string; readonly name: string }[]>
  openShipped(id: string): Promise<void>
  /** False once the browser has refused to keep the kit. */
  kept(): boolean
}

/** The kit: its name, its files, and every piece of it. */
export function KitSection({ box, files }: { box: KitBox; files: KitFiles }) {
  const kit = useStore(box.store, (state) => state.kit)
  const past = useStore(box.store, (state) => state.past.length)
  const future = useStore(box.store, (state) => state.future.length)
  const count = piecesIn(kit)
  return (
    <section aria-labelledby="find-kit">
      <h2 className="sheet-heading" id="find-kit">
        What is in the box
      </h2>
      <p className="find-note">
        {count === 0
          ? "Nothing yet. Add pieces, open a kit, or begin with an invented one."
          : `“${kit.name}”: ${count} ${count === 1 ? "piece" : "pieces"}.`}
        {!files.kept() && " The browser does not keep it: save it as a file."}
      </p>
      <div className="find-buttons">
        <button type="button" onClick={files.pick}>
          Open kit…
        </button>
        <button type="button" onClick={() => files.save("json")}>
          Save kit
        </button>
        <button type="button" onClick={() => files.save("csv")}>
          Save table
        </button>
        <ShippedKits files={files} />
      </div>
      <details className="find-pieces">
        <summary>Pieces</summary>
        <NameField
          label="Name of the box"
          name={kit.name}
          longest={200}
          mayBeEmpty
          onChange={(name) => box.change({ ...box.store.getState().kit, name })}
        />
        {kitSections.map((section) => (
          <Pieces key={section} box={box} section={section} />
        ))}
        <div className="find-buttons">
          <button type="button" aria-disabled={past === 0} onClick={() => box.undo()}>
            Undo in the box
          </button>
          <button type="button" aria-disabled={future === 0} onClick={() => box.redo()}>
            Redo
          </button>
        </div>
      </details>
    </section>
  )
}

const article = (word: string): string => (/^[aeiou]/i.test(word) ? "an" : "a")

function Pieces({ box, section }: { box: KitBox; section: Section }) {
  const bench = useBench()
  const pieces = useStore(box.store, (state) => state.kit[section])
  const [open, setOpen] = useState<number | null>(null)
  const { title, one } = plans[section]
  const add = () => {
    const { kit } = box.store.getState()
    box.change(withPieces(kit, section, (all) => [...all, newPiece[section]()]))
    setOpen(pieces.length)
    bench.say(`Added ${article(one)} ${one}`)
  }
  const remove = (index: number) => {
    const { kit } = box.store.getState()
    bench.say(`${pieces[index]?.name ?? one} taken out of the box`)
    box.change(withPieces(kit, section, (all) => all.filter((_, at) => at !== index)))
    setOpen(null)
  }
  return (
    <div className="find-section">
      <h3>{title}</h3>
      <ul>
        {pieces.map((piece, index) => (
          <PieceRow
            // biome-ignore lint/suspicious/noArrayIndexKey: pieces have no names of their own to tell them apart
            key={index}
            box={box}
            section={section}
            index={index}
            piece={piece}
            open={open === index}
            onOpen={(wanted) => setOpen(wanted ? index : null)}
            onRemove={() => remove(index)}
          />
        ))}
      </ul>
      <button type="button" onClick={add}>
        Add {article(one)} {one}
      </button>
    </div>
  )
}
