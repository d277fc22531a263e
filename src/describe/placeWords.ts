import { localNumber } from "../words/numbers"
import { places } from "../words/places"
import { type Shown, shownUnit, type UnitChoice } from "./format"

/**
 * A number with its unit and no zeros behind the point: "720 mm", "28.35 in", "−12°". For text that does not line up.
 * `fewerDecimals` drops as many of the unit's usual ones.
 */
export function short(value: number, quantity: Shown, units: UnitChoice, fewerDecimals = 0): string {
  const { unit, factor, decimals } = shownUnit(quantity, units)
  if (!Number.isFinite(value)) return "–"
  const rounded = Number((value * factor).toFixed(Math.max(0, decimals - fewerDecimals)))
  const number = localNumber(String(rounded === 0 ? 0 : rounded))
  if (unit === "") return number
  return unit === "°" || unit === "×" ? number + unit : `${number}\u00a0${unit}`
}

type Say = (far: string) => string

/** A place along one axis through the grip, mm, in whole millimetres or hundredths of an inch; `none` where that is 0. */
function sided(mm: number, more: Say, less: Say, none: string, units: UnitChoice): string {
  const text = short(Math.abs(mm), "length", units, units.lengthUnit === "mm" ? 1 : 0)
  if (/^0(?![.,\d])/.test(text)) return none
  return mm > 0 ? more(text) : less(text)
}

/** "62 mm ahead", "12 mm behind", "at the grip": a forward distance from the grip, mm. */
export const aheadWords = (mm: number, units: UnitChoice): string =>
  sided(mm, places.ahead, places.behind, places.atGrip, units)

/** "85 mm below", "12 mm above", "level with the grip": a height from the grip, mm. */
export const aboveWords = (mm: number, units: UnitChoice): string =>
  sided(mm, places.above, places.below, places.level, units)

/** "3 mm right", "2 mm left", "in the middle": a sideways distance from the grip, mm, positive to the right. */
export const sideWords = (mm: number, units: UnitChoice): string =>
  sided(mm, places.right, places.left, places.middle, units)

/** Whether a bow is held off the level or canted, so that along the bow and along the ground are two things. */
export const isTilted = ({ slopeDeg, cantDeg }: { readonly slopeDeg: number; readonly cantDeg: number }): boolean =>
  slopeDeg !== 0 || cantDeg !== 0
