import { failure, type Result, type SceneError, success } from "../errors"
import { elementFields, type NumberField } from "../fields"
import { rangeAmounts } from "../messages"
import { bare, explained, type Words } from "../words"

/** Evenly spaced values to try, in the file's unit: `from`, `from + step`, … up to `to`. */
export interface TryRange {
  readonly from: number
  readonly to: number
  readonly step: number
}

export interface HangRanges {
  readonly stemLengthMm: TryRange
  readonly bobMassG: TryRange
}

/** More tries than a search on a phone should be asked for. */
export const MOST_TRIES = 5_000_000

/** A last value that misses `to` by less than this part of a step counts: float64 rounding of the division. */
const STEP_SLACK = 1e-9
/** Values are rounded to this many decimals of the file's unit, so that 0.1 + 0.2 is written as 0.3. */
const DECIMALS = 6

/** The values of a range. Call only with ranges that `rangeFaults` passes. */
export function valuesOf({ from, to, step }: TryRange): number[] {
  return Array.from({ length: countOf({ from, to, step }) }, (_, index) =>
    Number((from + index * step).toFixed(DECIMALS)),
  )
}

const countOf = ({ from, to, step }: TryRange): number => Math.floor((to - from) / step + STEP_SLACK) + 1

/** Checks ranges against the limits of a scene; `places` is how many places are tried with each pair of values. */
export function checkedRanges(ranges: HangRanges, places: number): Result<HangRanges> {
  const faults = (["stemLengthMm", "bobMassG"] as const).flatMap((key) =>
    rangeFaults(key, ranges[key], elementFields.swing[key]),
  )
  if (faults.length > 0) return { ok: false, errors: faults }
  const tries = countOf(ranges.stemLengthMm) * countOf(ranges.bobMassG) * places
  if (tries <= MOST_TRIES) return success(ranges)
  const message = `${tries} tries asked for; at most ${MOST_TRIES} are made: take larger steps or fewer places`
  return failure({ code: "not-allowed", path: "", message })
}

function rangeFaults(key: keyof HangRanges, { from, to, step }: TryRange, field: NumberField): SceneError[] {
  const allowed = rangeAmounts(field)
  const fault = (path: string, given: number, needed: Words): SceneError =>
    explained("not-allowed", `${key}.${path}`, [bare(given, field.quantity), " given; ", ...needed, " is needed"])
  const faults: SceneError[] = []
  if (!(from >= field.min && from <= field.max)) faults.push(fault("from", from, allowed))
  if (!(to >= field.min && to <= field.max)) faults.push(fault("to", to, allowed))
  else if (to < from) faults.push(fault("to", to, ["no less than ", bare(from, field.quantity)]))
  if (!(step > 0 && Number.isFinite(step))) faults.push(fault("step", step, ["a step above 0"]))
  return faults
}
