import { short } from "../../describe/placeWords"
import type { UnitChoice } from "../../describe/format"
import type { NumberField } from "../../scene/fields"
import { kitFields, type Kit, type KitPiece, type KitSection } from "../../scene/kit"
import { findSheet } from "../../words/findSheet"

/** One number of a piece: its keys in the entry, from the outside in, and its field. */
export interface PieceNumber {
  readonly keys: readonly string[]
  readonly field: NumberField
  /** May be left out. */
  readonly optional: boolean
}

const number = (key: string, field: NumberField, optional = false): PieceNumber => ({ keys: [key], field, optional })
const tube = (f: typeof kitFields.rod | typeof kitFields.extender | typeof kitFields.damper) => [
  number("lengthMm", f.lengthMm),
  number("massG", f.massG),
  number("outerMm", f.outerMm),
  number("innerMm", f.innerMm),
]
const angles = (key: "splayDeg" | "droopDeg") =>
  (["from", "to", "step"] as const).map((part) => ({
    keys: [key, part],
    field: kitFields.vbar[key][part],
    optional: false,
  }))

/** The numbers of each kind of piece that can be edited, most asked for first. */
export const pieceNumbers: Readonly<Record<KitSection, readonly PieceNumber[]>> = {
  rods: [
    ...tube(kitFields.rod),
    number("modulusGPa", kitFields.rod.modulusGPa, true),
    number("maxEndWeightG", kitFields.rod.maxEndWeightG, true),
  ],
  extenders: tube(kitFields.extender),
  vbars: [
    ...angles("splayDeg"),
    ...angles("droopDeg"),
    number("massG", kitFields.vbar.massG),
    number("lengthMm", kitFields.vbar.lengthMm),
    number("outerMm", kitFields.vbar.outerMm),
    number("armOffsetMm", kitFields.vbar.armOffsetMm),
  ],
  dampers: [...tube(kitFields.damper), number("stiffnessNmPerRad", kitFields.damper.stiffnessNmPerRad, true)],
  discs: [
    number("eachG", kitFields.discs.eachG),
    number("outerMm", kitFields.discs.outerMm),
    number("thicknessMm", kitFields.discs.thicknessMm),
  ],
}

export const countField = (section: KitSection): NumberField =>
  section === "discs" ? kitFields.discs.count : kitFields.rod.count

/** The value at the keys of a piece, or undefined. */
export const valueIn = (piece: object, keys: readonly string[]): unknown =>
  keys.reduce<unknown>((here, key) => (here as Record<string, unknown> | undefined)?.[key], piece)

/** A kit with the value at some keys of one piece set, or left out with undefined. */
export function withValue(kit: Kit, section: KitSection, index: number, keys: readonly string[], value: unknown): Kit {
  const put = (here: object, [key, ...rest]: readonly string[]): object => {
    const next: Record<string, unknown> = { ...here }
    if (rest.length > 0) next[key!] = put(next[key!] as object, rest)
    else if (value === undefined) delete next[key!]
    else next[key!] = value
    return next
  }
  return withPieces(kit, section, (pieces) => pieces.map((piece, at) => (at === index ? put(piece, keys) : piece)))
}

/** A kit with another list of one kind of piece. */
export const withPieces = (
  kit: Kit,
  section: KitSection,
  change: (pieces: readonly KitPiece<KitSection>[]) => readonly object[],
): Kit => ({ ...kit, [section]: change(kit[section]) })

/** "650 mm, 104 g", "splay 20° to 60°, droop −10° to 30°": a piece in short. */
export function pieceText(section: KitSection, piece: KitPiece<KitSection>, units: UnitChoice): string {
  if ("eachG" in piece) return short(piece.eachG, "mass", units)
  const { splay, splayRange, droop, droopRange, usesShort } = findSheet.piece
  if ("splayDeg" in piece)
    return [anglesText(piece.splayDeg, splay, splayRange), anglesText(piece.droopDeg, droop, droopRange)].join(", ")
  const use = "use" in piece && section === "rods" && piece.use !== "any" ? [usesShort[piece.use]] : []
  return [short(piece.lengthMm, "length", units), short(piece.massG, "mass", units), ...use].join(", ")

  function anglesText(
    { from, to }: { from: number; to: number },
    one: (angle: string) => string,
    range: (from: string, to: string) => string,
  ) {
    const angle = (value: number) => short(value, "angle", units)
    return from === to ? one(angle(from)) : range(angle(from), angle(to))
  }
}
