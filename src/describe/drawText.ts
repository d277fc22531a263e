import type { ChangeShare, DrawChange } from "../scene/drawChange"
import type { DrawWork, WorkPoint } from "../scene/drawWork"
import { csvText } from "./csv"
import { fixed, said, type Shown, shownUnit, type UnitChoice } from "./format"
import { roundToSum } from "./reportTable"

/** AMO draw length: from the nock to 1.75 in ahead of the grip's pivot point, as the AMO standard measures it. */
const AMO_AHEAD_MM = 1.75 * 25.4

/** AMO draw length, mm, of a bow drawn `drawMm` back from the grip's pivot point. */
export const amoLengthMm = (drawMm: number): number => drawMm + AMO_AHEAD_MM

/** "709.5 mm (27.9 in)": shafts and draw lengths go by inches whatever else is measured in. In inches just "27.93 in". */
export function amoLengthText(drawMm: number, units: UnitChoice): string {
  const length = amoLengthMm(drawMm)
  const words = said(length, "length", units)
  return units.lengthUnit === "in" ? words : `${words} (${fixed(length / 25.4, 1)}\u00a0in)`
}

export const DRY_FIRE_CAUTION = "Never release a drawn bow without an arrow. Let it down with the hand on the string."

export const SKETCH_NOTE =
  "A sketch: cams are not modelled. Only its start, its peak and its holding force are this bow's own."

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

const WHY_ROWS = [
  ["brace", "At brace"],
  ["limbs", "Limbs move back"],
  ["string", "String drawn back"],
  ["arrow", "Arrow added"],
  ["pull", "Line of pull"],
] as const satisfies readonly (readonly [keyof DrawChange, string])[]

/** The table as shown: the lines above the last add up to it, digit by digit. */
export function whyTable(change: DrawChange, units: UnitChoice): WhyTable {
  const forward = column(change, (share) => share.forward * 1e3, "length", units)
  const raising = column(change, (share) => share.raising, "moment", units)
  const rows = WHY_ROWS.map(([key, name], index): WhyRow => {
    const total = key === "brace"
    return {
      name,
      forward: key === "pull" ? "" : signed(forward.parts[index]!, forward.decimals, !total),
      raising: signed(raising.parts[index]!, raising.decimals, true),
      total,
    }
  })
  const net: WhyRow = {
    name: "At full draw",
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
    WHY_ROWS.map(([key]) => of(change[key]) * factor),
    decimals,
  )
  const total = parts.reduce((sum, part) => sum + part, 0)
  return { parts, total, decimals }
}

function signed(value: number, decimals: number, plus: boolean): string {
  const text = fixed(value, decimals)
  return plus && value > 0 && Number(text) !== 0 ? `+${text}` : text
}

const causes = { limbs: "the limbs", string: "the string", arrow: "the arrow", pull: "the line of pull" } as const

/** "Mostly the line of pull: it raises the front by 7.21 N·m; the limbs, the string and the arrow add 0.31 N·m." */
export function whySentence(change: DrawChange, units: UnitChoice): string {
  const keys = ["limbs", "string", "arrow", "pull"] as const
  const largest = keys.reduce((best, key) =>
    Math.abs(change[key].raising) > Math.abs(change[best].raising) ? key : best,
  )
  const moment = change[largest].raising
  const rest = keys.reduce((sum, key) => (key === largest ? sum : sum + change[key].raising), 0)
  const way = (nm: number) => (nm >= 0 ? "raises" : "lowers")
  return (
    `Mostly ${causes[largest]}: it ${way(moment)} the front by ${said(Math.abs(moment), "moment", units)}; ` +
    `all else together ${way(rest)} it by ${said(Math.abs(rest), "moment", units)}.`
  )
}

/** "Drawn 512.0 mm: 121.3 N, 22.1 J stored": one place of the draw curve. */
export function drawPointText({ drawMm, forceN, workJ }: WorkPoint, units: UnitChoice, held?: number | null): string {
  const words = `Drawn ${said(drawMm, "length", units)}: ${said(forceN, "newtons", units)}, ${energyText(workJ)} stored`
  return held === undefined || held === null ? words : `${words}; the held bow ${said(held, "newtons", units)}`
}

export const energyText = (joule: number): string => `${fixed(joule, 1)}\u00a0J`

/** The draw curve as a table for a spreadsheet. */
export const drawCsv = ({ points }: DrawWork, held?: readonly (number | null)[]): string =>
  csvText([
    { heading: "draw from grip mm", values: points.map(({ drawMm }) => drawMm) },
    { heading: "force N", values: points.map(({ forceN }) => forceN) },
    { heading: "stored energy J", values: points.map(({ workJ }) => workJ) },
    ...(held === undefined ? [] : [{ heading: "force of the held bow N", values: held }]),
  ])

/** Instead of the reading, while the drawn curve is that of the limbs before a change. */
export const CURVE_BEHIND = "Dotted: the curve before this change. It follows when the change rests."
