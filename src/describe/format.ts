import type { Quantity } from "../scene/fields"
import { fileUnit } from "../scene/units"
import { localNumber, plainDigits } from "../words/numbers"

/** The three choices of unit; everything else follows from them. */
export interface UnitChoice {
  readonly massUnit: "g" | "oz"
  readonly lengthUnit: "mm" | "in"
  readonly forceUnit: "N" | "lbf"
}

/** What can be shown: what a field holds, and what is only computed (newtons, N·m, kg·m²). */
export type Shown = Quantity | "newtons" | "inertia" | "multiple"

export interface ShownUnit {
  readonly unit: string
  /** Shown number = file or report number × factor. */
  readonly factor: number
  readonly decimals: number
}

/** Exact: 1 oz = 28.349523125 g, 1 in = 25.4 mm, 1 lbf = 4.4482216152605 N (international pound and yard, 1959). */
const GRAM_PER_OUNCE = 28.349523125
const MM_PER_INCH = 25.4
const NEWTON_PER_LBF = 4.4482216152605
const NM_PER_LBF_INCH = (NEWTON_PER_LBF * MM_PER_INCH) / 1000
const KGM2_PER_LB_IN2 = 0.45359237 * 0.0254 * 0.0254

/** How a quantity is shown under the chosen units. */
export function shownUnit(quantity: Shown, choice: UnitChoice): ShownUnit {
  const inches = choice.lengthUnit === "in"
  switch (quantity) {
    case "mass":
      return choice.massUnit === "oz"
        ? { unit: "oz", factor: 1 / GRAM_PER_OUNCE, decimals: 2 }
        : { unit: "g", factor: 1, decimals: 0 }
    case "length":
      return inches ? { unit: "in", factor: 1 / MM_PER_INCH, decimals: 2 } : { unit: "mm", factor: 1, decimals: 1 }
    case "force":
      return { unit: "lbf", factor: 1, decimals: 1 }
    case "newtons":
      return choice.forceUnit === "lbf"
        ? { unit: "lbf", factor: 1 / NEWTON_PER_LBF, decimals: 2 }
        : { unit: "N", factor: 1, decimals: 1 }
    case "moment":
      return choice.forceUnit === "lbf"
        ? { unit: "lbf·in", factor: 1 / NM_PER_LBF_INCH, decimals: 2 }
        : { unit: "N·m", factor: 1, decimals: 2 }
    case "inertia":
      return choice.massUnit === "oz"
        ? { unit: "lb·in²", factor: 1 / KGM2_PER_LB_IN2, decimals: 0 }
        : { unit: "kg·m²", factor: 1, decimals: 3 }
    case "angle":
      return { unit: "°", factor: 1, decimals: 1 }
    case "count":
      return { unit: "", factor: 1, decimals: 0 }
    case "duration":
      return { unit: "s", factor: 1, decimals: 2 }
    case "multiple":
      return { unit: "×", factor: 1, decimals: 2 }
    case "fraction":
      return { unit: "", factor: 1, decimals: 2 }
    default:
      return { unit: fileUnit[quantity], factor: 1, decimals: 3 }
  }
}

export interface ShownNumber {
  /** With a true minus sign, never "-0". */
  readonly text: string
  readonly unit: string
}

/** A file- or report-unit number as it is shown. What is not finite is shown as a dash, never as a number. */
export function show(value: number, quantity: Shown, choice: UnitChoice, extraDecimals = 0): ShownNumber {
  const { unit, factor, decimals } = shownUnit(quantity, choice)
  return { text: fixed(value * factor, decimals + extraDecimals), unit }
}

/** "62.0 mm": number and unit with a narrow no-break space, for sentences and labels. */
export function said(value: number, quantity: Shown, choice: UnitChoice): string {
  const { text, unit } = show(value, quantity, choice)
  return withUnit(text, unit)
}

/** A shown number and its unit, which a line does not break apart. */
export function withUnit(text: string, unit: string): string {
  if (unit === "") return text
  return unit === "°" || unit === "×" ? `${text}${unit}` : `${text}\u00a0${unit}`
}

/** Fixed decimals, true minus, the reader's decimal mark, no negative zero; a dash for what is no number. */
export function fixed(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return "–"
  const text = value.toFixed(decimals)
  const zero = Number(text) === 0
  return localNumber(zero ? text.replace("-", "") : text)
}

/** A shown number typed back in: the value in the file's unit, or null when it is no number. */
export function typed(text: string, quantity: Shown, choice: UnitChoice): number | null {
  const plain = plainDigits(text)
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain)) return null
  return Number(plain) / shownUnit(quantity, choice).factor
}
