import { useId, useState } from "react"
import { problemText } from "../../describe/problemText"
import type { NumberField } from "../../scene/fields"
import type { Kit, KitPiece, KitSection } from "../../scene/kit"
import type { KitBox } from "../../state/kitBox"
import { useBench, useLive } from "../../state/useBench"
import { findSheet } from "../../words/findSheet"
import { PlainNumber } from "../hills/PlainNumber"
import { Problem } from "../Problem"
import { NameField } from "./NameField"
import { OptionalNumber } from "./OptionalNumber"
import { countField, type PieceNumber, pieceNumbers, pieceText, valueIn, withValue } from "./pieces"

const { piece: words } = findSheet

interface Props {
  readonly box: KitBox
  readonly section: KitSection
  readonly index: number
  readonly piece: KitPiece<KitSection>
  readonly open: boolean
  onOpen(open: boolean): void
  onRemove(): void
}

/** One kind of piece: its name and how many there are, and its numbers while it is open. */
export function PieceRow({ box, section, index, piece, open, onOpen, onRemove }: Props) {
  const bench = useBench()
  const units = useLive(({ preferences }) => preferences)
  const [problem, setProblem] = useState<string | null>(null)
  const id = useId()
  const set = (keys: readonly string[], value: unknown) => {
    const changed: Kit = withValue(box.store.getState().kit, section, index, keys, value)
    const result = box.change(changed)
    setProblem(result.ok ? null : problemText(bench.store.getState(), result.errors))
  }
  const field = countField(section)
  const step = (by: number) => {
    const count = Math.min(field.max, Math.max(field.min, piece.count + by))
    set(["count"], count)
    bench.say(words.count(piece.name, count))
  }
  return (
    <li className="find-piece" data-open={open || undefined}>
      <button
        type="button"
        className="find-piece-name"
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={() => onOpen(!open)}
      >
        <span className="part-mark" aria-hidden="true" />
        <span>
          {piece.name}
          <span className="find-piece-more">{pieceText(section, piece, units)}</span>
        </span>
      </button>
      <span className="find-piece-count">
        <button type="button" className="step-button" aria-label={words.less(piece.name)} onClick={() => step(-1)}>
          −
        </button>
        <span role="status" aria-live="off" aria-label={words.inBox(piece.count)}>
          {piece.count}
        </span>
        <button type="button" className="step-button" aria-label={words.more(piece.name)} onClick={() => step(1)}>
          +
        </button>
      </span>
      {open && (
        <div className="find-piece-fields" id={id}>
          <NameField label={words.name} name={piece.name} longest={120} onChange={(name) => set(["name"], name)} />
          <PlainNumber
            label={field.label}
            name={words.numberOf(field.label, piece.name)}
            field={field}
            value={piece.count}
            onChange={(count) => set(["count"], count)}
          />
          {"use" in piece && <Use use={piece.use} onChange={(use) => set(["use"], use)} />}
          {pieceNumbers[section].map((number) => (
            <PieceField
              key={`${piece.name} ${number.keys.join()}`}
              number={number}
              piece={piece}
              onChange={(value) => set(number.keys, value)}
            />
          ))}
          <Problem text={problem} />
          <button type="button" onClick={onRemove}>
            {words.takeOut}
          </button>
        </div>
      )}
    </li>
  )
}

function PieceField({
  number: { keys, field, optional },
  piece,
  onChange,
}: {
  number: PieceNumber
  piece: KitPiece<KitSection>
  onChange(value: number | undefined): void
}) {
  const value = valueIn(piece, keys) as number | undefined
  if (optional)
    return <OptionalNumber owner={piece.name} field={field} value={value} start={startOf(field)} onChange={onChange} />
  return (
    <PlainNumber
      label={field.label}
      name={words.numberOf(field.label, piece.name)}
      field={field}
      value={value ?? 0}
      onChange={onChange}
    />
  )
}

/** What a number that was left out begins with. */
const startOf = (field: NumberField): number =>
  field.quantity === "mass" ? 300 : field.quantity === "modulus" ? 100 : 40

type UseOf = KitPiece<"rods">["use"]

function Use({ use, onChange }: { use: UseOf; onChange(use: UseOf): void }) {
  return (
    <label className="find-name">
      <span>{words.use}</span>
      <select value={use} onChange={(event) => onChange(event.target.value as UseOf)}>
        {(["front", "side", "any"] as const).map((each) => (
          <option key={each} value={each}>
            {words.uses[each]}
          </option>
        ))}
      </select>
    </label>
  )
}
