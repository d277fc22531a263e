import type { ChangeShare, DrawChange } from "../scene/drawChange"
import type { DrawWork, WorkPoint } from "../scene/drawWork"
import { draw as words } from "../words/draw"
import { csvText } from "./csv"
import { fixed, said, type Shown, shownUnit, type UnitChoice, withUnit } from "./format"
import { roundToSum } from "./reportTable"

/** AMO draw length: from the nock to 1.75 in ahead of the grip's pivot point, as the AMO standard measures it. */
const AMO_AHEAD_MM = 1.75 * 25.4

/** AMO draw length, mm, of a bow drawn `drawMm` back from the grip's pivot point. */
export const amoLengthMm = (drawMm: number): number => drawMm + AMO_AHEAD_MM

/** "709.5 mm (27.9 in)": shafts and draw lengths go by inches whatever else is measured in. In inches just "27.93 in". */
export function amoLengthText(drawMm: number, units: UnitChoice): string {
  const length = amoLengthMm(drawMm)
  const text = said(length, "length", units)
  return units.lengthUnit === "in" ? text : `${text} (${withUnit(fixed(length / 25.4, 1), "in")})`
}

/** A line of the table that says why the balance changes when drawn. */
export interface WhyRow {
  readonly name: string
  /** Balance point forward, or how far it moves, in the chosen unit; empty for what moves no mass. */
  readonly forward: string
  /** By how much it raises the front. */
  readonly raising: string
  /** The first and the last line: where it begins and what it comes to. */
  readonly total: boolean
}

export interface WhyTable {
  readonly lengthUnit: string
  readonly momentUnit: string
  readonly rows: readonly WhyRow[]
}

const CAUSES = ["limbs", "string", "arrow", "pull"] as const
const WHY_ROWS = ["brace", ...CAUSES] as const satisfies readonly (keyof DrawChange)[]

/** The table as shown: the lines above the last add up to it, digit by digit. */
export function whyTable(change: DrawChange, units: UnitChoice): WhyTable {
  const forward = column(change, (share) => share.forward * 1e3, "length", units)
  const raising = column(change, (share) => share.raising, "moment", units)
  const rows = WHY_ROWS.map((key, index): WhyRow => {
    const total = key === "brace"
    return {
      name: words.why.rows[key],
      forward: key === "pull" ? "" : signed(forward.parts[index]!, forward.decimals, !total),
      raising: signed(raising.parts[index]!, raising.decimals, true),
      total,
    }
  })
  const net: WhyRow = {
    name: words.why.rows.full,
    forward: signed(forward.total, forward.decimals, false),
    raising: signed(raising.total, raising.decimals, true),
    total: true,
  }
  return {
    lengthUnit: shownUnit("length", units).unit,
    momentUnit: shownUnit("moment", units).unit,
    rows: [...rows, net],
  }
}

function column(change: DrawChange, of: (share: ChangeShare) => number, quantity: Shown, units: UnitChoice) {
  const { factor, decimals } = shownUnit(quantity, units)
  const parts = roundToSum(
    WHY_ROWS.map((key) => of(change[key]) * factor),
    decimals,
  )
  const total = parts.reduce((sum, part) => sum + part, 0)
  return { parts, total, decimals }
}

function signed(value: number, decimals: number, plus: boolean): string {
  const text = fixed(value, decimals)
  return plus && value > 0 && /[1-9]/.test(text) ? `+${text}` : text
}

/** "Mostly the line of pull: it raises the front by 7.21 N·m; all else together lowers it by 0.31 N·m." */
export function whySentence(change: DrawChange, units: UnitChoice): string {
  const largest = CAUSES.reduce((best, key) =>
    Math.abs(change[key].raising) > Math.abs(change[best].raising) ? key : best,
  )
  const moment = change[largest].raising
  const rest = CAUSES.reduce((sum, key) => (key === largest ? sum : sum + change[key].raising), 0)
  const way = (nm: number) => (nm >= 0 ? "raises" : "lowers")
  const size = (nm: number) => said(Math.abs(nm), "moment", units)
  return words.why.mostly[way(moment)][way(rest)](words.why.causes[largest], size(moment), size(rest))
}

/** "Drawn 512.0 mm: 121.3 N, 22.1 J stored": one place of the draw curve. */
export function drawPointText({ drawMm, forceN, workJ }: WorkPoint, units: UnitChoice, held?: number | null): string {
  const { at, atWithHeld } = words.curve
  const here = [said(drawMm, "length", units), said(forceN, "newtons", units), energyText(workJ)] as const
  return held === undefined || held === null ? at(...here) : atWithHeld(...here, said(held, "newtons", units))
}

export const energyText = (joule: number): string => withUnit(fixed(joule, 1), "J")

/** The draw curve as a table for a spreadsheet. */
export const drawCsv = ({ points }: DrawWork, held?: readonly (number | null)[]): string =>
  csvText([
    { heading: words.csv.draw, values: points.map(({ drawMm }) => drawMm) },
    { heading: words.csv.force, values: points.map(({ forceN }) => forceN) },
    { heading: words.csv.energy, values: points.map(({ workJ }) => workJ) },
    ...(held === undefined ? [] : [{ heading: words.csv.held, values: held }]),
  ])
