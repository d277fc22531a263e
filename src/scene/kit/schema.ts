/**
 * The kit file, version 1: what is in the box. Strict everywhere, like the scene's. Pieces have the keys of the parts
 * they become on a rig.
 */
import * as z from "zod/mini"
import { defaulted, needed, optional, text, tube } from "../schema"
import { kitFields, MAX_KIT_ENTRIES } from "./fields"

export const KIT_FORMAT = "bow-balance-bench-kit"
export const KIT_VERSION = 1

const name = z.string().check(z.minLength(1), z.maxLength(120))
const list = <T extends z.ZodMiniType>(entry: T) => z._default(z.array(entry).check(z.maxLength(MAX_KIT_ENTRIES)), [])

/** Where a rod goes: as a front or single rod, on a V-bar's arm, or either. */
const use = z._default(z.enum(["front", "side", "any"]), "any")

const rod = z.strictObject({
  name,
  count: needed(kitFields.rod.count),
  use,
  ...pieceOf(tube(kitFields.rod)),
  maxEndWeightG: optional(kitFields.rod.maxEndWeightG),
})
const extender = z.strictObject({
  name,
  count: needed(kitFields.extender.count),
  ...pieceOf(tube(kitFields.extender)),
})
const damper = z.strictObject({
  name,
  count: needed(kitFields.damper.count),
  ...pieceOf(tube(kitFields.damper)),
  stiffnessNmPerRad: optional(kitFields.damper.stiffnessNmPerRad),
})
/** The angles a V-bar's arms can be set to; a fixed one has from = to. */
const angles = (f: typeof kitFields.vbar.splayDeg | typeof kitFields.vbar.droopDeg) =>
  z.strictObject({ from: needed(f.from), to: needed(f.to), step: defaulted({ ...f.step, fallback: 1 }) })
const vbar = z.strictObject({
  name,
  count: needed(kitFields.vbar.count),
  massG: needed(kitFields.vbar.massG),
  lengthMm: needed(kitFields.vbar.lengthMm),
  outerMm: needed(kitFields.vbar.outerMm),
  armOffsetMm: needed(kitFields.vbar.armOffsetMm),
  splayDeg: angles(kitFields.vbar.splayDeg),
  droopDeg: angles(kitFields.vbar.droopDeg),
})
const discs = z.strictObject({
  name,
  count: needed(kitFields.discs.count),
  eachG: needed(kitFields.discs.eachG),
  outerMm: needed(kitFields.discs.outerMm),
  thicknessMm: needed(kitFields.discs.thicknessMm),
})

export const kitSchema = z.strictObject({
  format: z.literal(KIT_FORMAT),
  version: z.literal(KIT_VERSION),
  name: z.string().check(z.maxLength(200)),
  notes: z._default(text(20_000), ""),
  rods: list(rod),
  extenders: list(extender),
  vbars: list(vbar),
  dampers: list(damper),
  discs: list(discs),
})

/** A piece has its name in place of a part's label. */
function pieceOf<T extends { label: unknown }>({ label: _, ...keys }: T): Omit<T, "label"> {
  return keys
}

/** A whole valid kit with every default filled in. */
export type Kit = z.output<typeof kitSchema>
export const kitSections = ["rods", "extenders", "vbars", "dampers", "discs"] as const
export type KitSection = (typeof kitSections)[number]
export type KitPiece<S extends KitSection> = Kit[S][number]
