import { hangFaults as faults } from "../../words/hangFaults"
import { failure, type Result, type SceneError, success } from "../errors"
import { elementFields, type NumberField } from "../fields"
import { rangeAmounts } from "../messages"
import { countOf, type TryRange } from "./steps"
import { bare, explained, type Words } from "../words"

export interface HangRanges {
  readonly stemLengthMm: TryRange
  readonly bobMassG: TryRange
}

/** More tries than a search on a phone should be asked for. */
export const MOST_TRIES = 5_000_000

/** Checks ranges against the limits of a scene; `places` is how many places are tried with each pair of values. */
export function checkedRanges(ranges: HangRanges, places: number): Result<HangRanges> {
  const found = (["stemLengthMm", "bobMassG"] as const).flatMap((key) =>
    rangeFaults(key, ranges[key], elementFields.swing[key]),
  )
  if (found.length > 0) return { ok: false, errors: found }
  const tries = countOf(ranges.stemLengthMm) * countOf(ranges.bobMassG) * places
  if (tries <= MOST_TRIES) return success(ranges)
  return failure({ code: "not-allowed", path: "", message: faults.tooMany(String(tries), String(MOST_TRIES)) })
}

function rangeFaults(key: keyof HangRanges, { from, to, step }: TryRange, field: NumberField): SceneError[] {
  const said = (value: number) => bare(value, field.quantity)
  const fault = (path: string, words: Words): SceneError => explained("not-allowed", `${key}.${path}`, words)
  const outside = (given: number): Words => faults.outside(said(given), ...rangeAmounts(field))
  const found: SceneError[] = []
  if (!(from >= field.min && from <= field.max)) found.push(fault("from", outside(from)))
  if (!(to >= field.min && to <= field.max)) found.push(fault("to", outside(to)))
  else if (to < from) found.push(fault("to", faults.below(said(to), said(from))))
  if (!(step > 0 && Number.isFinite(step))) found.push(fault("step", faults.noStep(said(step))))
  return found
}
