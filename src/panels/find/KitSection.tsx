import { useState } from "react"
import { useStore } from "./useStore"
import { type KitSection as Section, kitSections, piecesIn } from "../../scene/kit"
import type { KitBox } from "../../state/kitBox"
import { useBench } from "../../state/useBench"
import { findSheet } from "../../words/findSheet"
import { NameField } from "./NameField"
import { newPiece } from "./newPieces"
import { PieceRow } from "./PieceRow"
import { withPieces } from "./pieces"
import { ShippedKits } from "./ShippedKits"

const { box: words } = findSheet

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
        {words.heading}
      </h2>
      <p className="find-note">
        {count === 0 ? words.empty : words.holds(kit.name, count)}
        {!files.kept() && ` ${words.notKept}`}
      </p>
      <div className="find-buttons">
        <button type="button" onClick={files.pick}>
          {words.open}
        </button>
        <button type="button" onClick={() => files.save("json")}>
          {words.save}
        </button>
        <button type="button" onClick={() => files.save("csv")}>
          {words.saveTable}
        </button>
        <ShippedKits files={files} />
      </div>
      <details className="find-pieces">
        <summary>{words.pieces}</summary>
        <NameField
          label={words.name}
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
            {words.undo}
          </button>
          <button type="button" aria-disabled={future === 0} onClick={() => box.redo()}>
            {words.redo}
          </button>
        </div>
      </details>
    </section>
  )
}

function Pieces({ box, section }: { box: KitBox; section: Section }) {
  const bench = useBench()
  const pieces = useStore(box.store, (state) => state.kit[section])
  const [open, setOpen] = useState<number | null>(null)
  const { title, one, add: addWords, added } = findSheet[section]
  const add = () => {
    const { kit } = box.store.getState()
    box.change(withPieces(kit, section, (all) => [...all, newPiece[section]()]))
    setOpen(pieces.length)
    bench.say(added)
  }
  const remove = (index: number) => {
    const { kit } = box.store.getState()
    bench.say(findSheet.piece.takenOut(pieces[index]?.name ?? one))
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
        {addWords}
      </button>
    </div>
  )
}
