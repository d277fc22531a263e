import type { Evaluation } from "../scene/evaluate"
import { partsTable as words } from "../words/partsTable"
import { fixed, type Shown, show, shownUnit, type UnitChoice } from "./format"
import { partShares, percentText } from "./partShares"
import { roundedToSum } from "./roundedToSum"

/** One part's line of the table, as shown. */
export interface PartLine {
  /** "110 g" */
  readonly mass: string
  /** "forward 412, up −70, side 0 mm" */
  readonly place: string
  /** "0.312 N·m", positive lowers the front. */
  readonly moment: string
  /** "37 %" of the whole nose-down moment; a dash where the whole is too small to share. */
  readonly share: string
  /** The moment against the largest of any part, -1 … 1. */
  readonly bar: number
}

export interface PartsTable {
  readonly lines: ReadonlyMap<string, PartLine>
  readonly total: Pick<PartLine, "mass" | "moment" | "share">
}

/** One more digit than a single number has, so that the rounding to the sum shows on no part one can feel. */
const MOMENT_EXTRA_DECIMALS = 1

const NO_SHARE = "–"

let last: { readonly evaluation: Evaluation; readonly units: UnitChoice; readonly table: PartsTable } | null = null

/**
 * Mass, place and moment of every part at the pose, by part path. Masses, moments and shares add up as shown. The
 * last table is remembered: all rows of a page ask for the same one.
 */
export function partsTable(evaluation: Evaluation, units: UnitChoice): PartsTable {
  if (last?.evaluation === evaluation && last.units === units) return last.table
  const table = makeTable(evaluation, units)
  last = { evaluation, units, table }
  return table
}

function makeTable(evaluation: Evaluation, units: UnitChoice): PartsTable {
  const { now } = evaluation
  const grams = now.parts.map((part) => part.mass * 1e3)
  const moments = now.parts.map((part) => part.noseDown)
  const masses = addingUp(grams, "mass", 0, units)
  const shown = addingUp(moments, "moment", MOMENT_EXTRA_DECIMALS, units)
  const shares = partShares(evaluation)
  const largest = Math.max(...moments.map(Math.abs))
  const lines = now.parts.map((part, index): [string, PartLine] => [
    part.path,
    {
      mass: masses.texts[index]!,
      place: placeText(part.centre, units),
      moment: shown.texts[index]!,
      share: shares?.get(part.path) ?? NO_SHARE,
      bar: largest > 0 ? moments[index]! / largest : 0,
    },
  ])
  const total = { mass: masses.total, moment: shown.total, share: shares === null ? NO_SHARE : percentText(100) }
  return { lines: new Map(lines), total }
}

function addingUp(values: readonly number[], quantity: Shown, extra: number, units: UnitChoice) {
  const { unit, factor, decimals } = shownUnit(quantity, units)
  const digits = decimals + extra
  const rounded = roundedToSum(
    values.map((value) => value * factor),
    digits,
  )
  const text = (number: number) => `${fixed(number, digits)}\u00a0${unit}`
  return { texts: rounded.map(text), total: text(rounded.reduce((sum, number) => sum + number, 0)) }
}

/** To the whole millimetre or tenth of an inch: a part's centre is known no better. */
function placeText(centre: readonly [number, number, number], units: UnitChoice): string {
  const text = (value: number) => show(value * 1e3, "length", units, -1).text
  const [forward, up, side] = centre
  return words.place(text(forward), text(up), `${text(side)}\u00a0${shownUnit("length", units).unit}`)
}
