import type { UnitChoice } from "../describe/format"
import { aheadWords, short } from "../describe/placeWords"
import type { Handle } from "./handle"

/** What a handle stands at: "720 mm", "5 discs", "−12°". */
export function valueText({ field, value }: Pick<Handle, "field" | "value">, units: UnitChoice): string {
  if (field.quantity === "count") return value === 1 ? "1 disc" : `${value} discs`
  return short(value, field.quantity, units)
}

/** The same with what it does: "720 mm; balance point 64 mm ahead". `forwardMm`: the balance point's, bow axes. */
export const valueAndEffect = (handle: Pick<Handle, "field" | "value">, forwardMm: number, units: UnitChoice): string =>
  `${valueText(handle, units)}; balance point ${aheadWords(forwardMm, units)}`

/** Said once a change is done: "Front rod length 720 mm. Balance point 64 mm ahead." */
export const changeText = (handle: Pick<Handle, "field" | "value" | "label">, forwardMm: number, units: UnitChoice) =>
  `${handle.label} ${valueText(handle, units)}. Balance point ${aheadWords(forwardMm, units)}.`

/** What a tooltip shows of a handle; with paired arms it says that both move. */
export const tipText = (handle: Pick<Handle, "field" | "value" | "twin">, paired: boolean, units: UnitChoice): string =>
  valueText(handle, units) + (paired && handle.twin !== null ? ", both arms" : "")
