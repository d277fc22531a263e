import { localNumber } from "../words/numbers"
import { picture } from "../words/picture"
import { fixed, type UnitChoice } from "./format"
import { aheadWords, short, sideWords } from "./placeWords"

/** Shorter than this a side arm is not spoken of on a label, mm. */
export const SIDE_SAID = 1.5

/**
 * The moment arm on its dimension line, mm: "62 mm ahead", "8 mm behind, 3 mm right". Of a bow that is `tilted` it says
 * that it is measured on the level: along the bow the balance point is as far ahead as it always is.
 */
export function armLabel(forward: number, side: number, units: UnitChoice, tilted = false): string {
  const ahead = aheadWords(forward, units)
  const words = Math.abs(side) < SIDE_SAID ? ahead : `${ahead}, ${sideWords(side, units)}`
  return tilted ? picture.onLevel(words) : words
}

/** The zone of wanted balance points; "target" alone is what is shot at. */
export const BALANCE_TARGET = picture.zone

/** "pitch 2.3×": a turn resistance as a multiple of the bow without its rig. */
export const turnLabel = (name: string, multiple: number): string =>
  Number.isFinite(multiple) ? `${name} ${fixed(multiple, 1)}×` : name

/** A distance along the ground, m: "0.5 m", "20 in". */
export const groundLabel = (distance: number, units: UnitChoice): string =>
  units.lengthUnit === "mm"
    ? `${localNumber(String(distance))}\u00a0m`
    : short(Math.round(distance / 0.0254) * 25.4, "length", units)
