import { short } from "../../describe/placeWords"
import type { UnitChoice } from "../../describe/format"
import type { NumberField } from "../../scene/fields"
import { kitFields, type Kit, type KitPiece, type KitSection } from "../../scene/kit"

/** One number of a piece: its keys in the entry, from the outside in, and its field. */
export interface PieceNumber {
  readonly keys: readonly string[]
  readonly field: NumberField
  /** May be left out. */
  readonly optional: boolean
}

interface SectionPlan {
  readonly title: string
  /** For the button that adds one. */
  readonly one: string
  readonly numbers: readonly PieceNumber[]
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

/** What of each kind of piece can be edited, most asked for first. */
export const plans: Readonly<Record<KitSection, SectionPlan>> = {
  rods: {
    title: "Rods",
    one: "rod",
    numbers: [
      ...tube(kitFields.rod),
      number("modulusGPa", kitFields.rod.modulusGPa, true),
      number("maxEndWeightG", kitFields.rod.maxEndWeightG, true),
    ],
  },
  extenders: { title: "Extenders", one: "extender", numbers: tube(kitFields.extender) },
  vbars: {
    title: "V-bars",
    one: "V-bar",
    numbers: [
      ...angles("splayDeg"),
      ...angles("droopDeg"),
      number("massG", kitFields.vbar.massG),
      number("lengthMm", kitFields.vbar.lengthMm),
      number("outerMm", kitFields.vbar.outerMm),
      number("armOffsetMm", kitFields.vbar.armOffsetMm),
    ],
  },
  dampers: {
    title: "Dampers",
    one: "damper",
    numbers: [...tube(kitFields.damper), number("stiffnessNmPerRad", kitFields.damper.stiffnessNmPerRad, true)],
  },
  discs: {
    title: "Discs",
    one: "kind of disc",
    numbers: [
      number("eachG", kitFields.discs.eachG),
      number("outerMm", kitFields.discs.outerMm),
      number("thicknessMm", kitFields.discs.thicknessMm),
    ],
  },
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
  if ("splayDeg" in piece)
    return (["splayDeg", "droopDeg"] as const).map((key) => anglesText(key, piece[key])).join(", ")
  const use = "use" in piece && section === "rods" && piece.use !== "any" ? `, ${piece.use}` : ""
  return `${short(piece.lengthMm, "length", units)}, ${short(piece.massG, "mass", units)}${use}`

  function anglesText(key: string, { from, to }: { from: number; to: number }) {
    const angle = (value: number) => short(value, "angle", units)
    return `${key.replace("Deg", "")} ${from === to ? angle(from) : `${angle(from)} to ${angle(to)}`}`
  }
}
