import type { NumberField } from "../scene/fields"
import { quoted } from "../scene/errors"
import { localNumber, typedNumber } from "../words/numbers"
import { typedNumbers as words } from "../words/typedNumbers"
import { groupedProblem } from "./groupedText"
import { type Shown, shownUnit, typed, type UnitChoice, withUnit } from "./format"

/** Digits past the shown ones that a text field keeps, so that opening and leaving it changes nothing one can see. */
const MORE_DIGITS = 2

/** A number as the text of a field: the chosen unit, no needless zeros, a hyphen for minus as keyboards have it. */
export function fieldText(value: number, quantity: Shown, units: UnitChoice): string {
  return typedNumber(fieldDigits(value, quantity, units))
}

function fieldDigits(value: number, quantity: Shown, units: UnitChoice): string {
  const { factor, decimals } = fieldUnit(quantity, units)
  return String(Number((value * factor).toFixed(decimals + MORE_DIGITS)) || 0)
}

/** The same within a sentence. */
export const fieldNumber = (value: number, quantity: Shown, units: UnitChoice): string =>
  localNumber(fieldDigits(value, quantity, units))

/** The unit a field shows. A fraction is typed as a percentage. */
export const fieldUnit = (quantity: Shown, units: UnitChoice) =>
  quantity === "fraction" ? { unit: "%", factor: 100, decimals: 0 } : shownUnit(quantity, units)

export type Reading = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly problem: string }

/**
 * What was typed as a value in the file's unit, or why it cannot be taken, with the range in the shown unit. A comma
 * counts as the decimal point, and the shown unit may be typed after the number.
 */
export function readField(text: string, field: NumberField, units: UnitChoice): Reading {
  const { unit, factor } = fieldUnit(field.quantity, units)
  const plain = text.trim()
  const number = plain.toLowerCase().endsWith(unit.toLowerCase()) ? plain.slice(0, plain.length - unit.length) : plain
  const given = typed(number, "count", units)
  const refuse = (): Reading => ({
    ok: false,
    problem: words.refused(quotedText(plain), allowedText(field, units)),
  })
  const twoWays = groupedProblem(number)
  if (twoWays !== null) return { ok: false, problem: words.unclear(twoWays, allowedText(field, units)) }
  if (given === null) return refuse()
  const value = exact(given / factor, field, units)
  return value >= field.min && value <= field.max && (!field.whole || Number.isInteger(value))
    ? { ok: true, value }
    : refuse()
}

/** "a number from 1 to 2000 mm", "a whole number from 0 to 60": the range in the shown unit. */
export function allowedText(field: NumberField, units: UnitChoice): string {
  const { unit } = fieldUnit(field.quantity, units)
  const [from, to] = [fieldNumber(field.min, field.quantity, units), fieldNumber(field.max, field.quantity, units)]
  return (field.whole ? words.whole : words.number)(from, withUnit(to, unit))
}

/**
 * The value one arrow key away, in the file's unit. A step is the field's own where it is shown in the file's unit,
 * else the nearest of 1, 2, 5 times a power of ten of the shown unit: 0.05 in for 1 mm. Stops at the range's ends.
 */
export function stepped(value: number, field: NumberField, units: UnitChoice, steps: number, coarse: boolean): number {
  const { factor } = fieldUnit(field.quantity, units)
  const own = coarse ? field.coarse : field.step
  const step = factor === 1 || field.quantity === "fraction" ? own * factor : roundStep(own * factor)
  const shown = value * factor + steps * step
  return Math.min(field.max, Math.max(field.min, exact(shown / factor, field, units)))
}

/** 1, 2 or 5 times a power of ten, the nearest by ratio. */
function roundStep(step: number): number {
  const power = 10 ** Math.floor(Math.log10(step))
  const choices = [1, 2, 5, 10].map((digit) => digit * power)
  const distance = (choice: number) => Math.abs(Math.log(choice / step))
  return choices.reduce((best, choice) => (distance(choice) < distance(best) ? choice : best))
}

/**
 * Drops what binary arithmetic adds far behind the point (0.1 + 0.2), and lets a limit typed as it is shown, rounded
 * in inches or ounces, be the limit and not a hair past it.
 */
function exact(value: number, { min, max, quantity }: NumberField, units: UnitChoice): number {
  const { factor, decimals } = fieldUnit(quantity, units)
  const clean = Number(value.toPrecision(12))
  const slack = factor === 1 ? 0 : (0.51 * 10 ** -(decimals + MORE_DIGITS)) / factor
  if (clean > max && clean <= max + slack) return max
  if (clean < min && clean >= min - slack) return min
  return clean
}

const quotedText = (text: string): string => quoted(text === "" ? undefined : text)

/** "700 mm", "37 %": a field's number with its unit, for announcements. */
export function fieldSaid(value: number, quantity: Shown, units: UnitChoice): string {
  return withUnit(fieldNumber(value, quantity, units), fieldUnit(quantity, units).unit)
}
