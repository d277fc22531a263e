import type { NamedPoint } from "../../scene/measure"
import { measureFields } from "../../scene/measure/fields"
import type { Measurement, Scene } from "../../scene/schema"
import { measureSheet } from "../../words/measureSheet"
import type { ReadingDraft } from "./drafts"
import { editedPlace } from "./editing"

/** A typed place, not one of the bow's named ones. */
export const OWN_POINT = "own"

/** The numbers of each kind that have to be typed, and those that have a usual value. */
const typed = {
  scale: ["massG"],
  hang: ["slopeDeg"],
  swing: ["count", "seconds"],
  twist: ["count", "seconds", "lineMm", "radiusMm"],
} as const satisfies Record<Measurement["kind"], readonly (keyof typeof measureFields)[]>
const usual = {
  scale: ["errorG"],
  hang: ["errorDeg", "pointErrorMm"],
  swing: ["errorSeconds", "amplitudeDeg", "pointErrorMm"],
  twist: ["errorSeconds", "radiusErrorMm"],
} as const satisfies Record<Measurement["kind"], readonly (keyof typeof measureFields)[]>

export type MeasureField = keyof typeof measureFields
export const typedFields = (kind: Measurement["kind"]): readonly MeasureField[] => typed[kind]
export const usualFields = (kind: Measurement["kind"]): readonly MeasureField[] => usual[kind]

export const isPlaced = (kind: Measurement["kind"]): boolean => kind === "hang" || kind === "swing"

/** What is still to be typed before the draft is a reading, by label; empty when it is one. */
export function missing(draft: ReadingDraft, points: readonly NamedPoint[]): string[] {
  const { kind, values, cantRead, point } = draft
  const wanted: readonly MeasureField[] = [
    ...typedFields(kind),
    ...(kind === "hang" && cantRead ? ["cantDeg" as const] : []),
  ]
  const numbers = wanted.filter((name) => values[name] === undefined).map((name) => measureFields[name].label)
  const open =
    point === OWN_POINT
      ? ["at0", "at1", "at2"].some((key) => values[key] === undefined)
      : !points.some(({ key }) => key === point)
  return [...numbers, ...(isPlaced(kind) && open ? [measureSheet.take.thePoint] : [])]
}

/** The reading of a draft that misses nothing. */
export function readingOf(
  draft: ReadingDraft,
  scene: Scene,
  points: readonly NamedPoint[],
  today: string,
): Measurement {
  const { kind, on, axis, values, words, editing, cantRead } = draft
  const place = editedPlace(editing, scene.measurements)
  const before = place === null ? undefined : scene.measurements?.[place]
  const number = (name: MeasureField) => values[name] ?? measureFields[name].fallback ?? measureFields[name].min
  const rig = on !== "rigged" ? undefined : before?.on === "rigged" && words.rig === "then" ? before.rig : scene.rig
  const common = {
    on,
    ...(rig === undefined ? {} : { rig }),
    excluded: before?.excluded ?? false,
    note: words.note ?? "",
    date: before?.date ?? today,
  }
  const timed = { axis, count: number("count"), seconds: number("seconds"), errorSeconds: number("errorSeconds") }
  switch (kind) {
    case "scale":
      return { kind, massG: number("massG"), errorG: number("errorG"), ...common }
    case "hang":
      return {
        kind,
        atMm: placeOf(draft, points),
        pointErrorMm: number("pointErrorMm"),
        slopeDeg: number("slopeDeg"),
        ...(cantRead ? { cantDeg: number("cantDeg") } : {}),
        errorDeg: number("errorDeg"),
        ...common,
      }
    case "swing":
      return {
        kind,
        atMm: placeOf(draft, points),
        pointErrorMm: number("pointErrorMm"),
        ...timed,
        amplitudeDeg: number("amplitudeDeg"),
        ...common,
      }
    case "twist":
      return {
        kind,
        ...timed,
        lineMm: number("lineMm"),
        radiusMm: number("radiusMm"),
        radiusErrorMm: number("radiusErrorMm"),
        ...common,
      }
  }
}

/** Where the draft hangs, mm: the named point's place, or the typed one; the grip where neither is there. */
export function placeOf(
  { point, values }: Pick<ReadingDraft, "point" | "values">,
  points: readonly NamedPoint[],
): [number, number, number] {
  const named = point === OWN_POINT ? undefined : points.find(({ key }) => key === point)
  if (named !== undefined) return [...named.atMm]
  return [values.at0 ?? 0, values.at1 ?? 0, values.at2 ?? 0]
}

/** A reading of the list as a draft, to be changed. */
export function draftOf(reading: Measurement, place: number): Partial<ReadingDraft> {
  const values = Object.fromEntries(
    Object.entries(reading).filter((entry): entry is [string, number] => typeof entry[1] === "number"),
  )
  const [at0, at1, at2] = "atMm" in reading ? reading.atMm : []
  return {
    kind: reading.kind,
    on: reading.on,
    editing: { place, was: reading },
    texts: {},
    values: { ...values, ...(at0 === undefined ? {} : { at0, at1: at1 ?? 0, at2: at2 ?? 0 }) },
    words: { note: reading.note, rig: "then" },
    point: OWN_POINT,
    ...("axis" in reading ? { axis: reading.axis } : {}),
    cantRead: reading.kind !== "hang" || reading.cantDeg !== undefined,
  }
}
