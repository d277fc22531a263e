/** Evenly spaced values to try, in the file's unit: `from`, `from + step`, … up to `to`. */
export interface TryRange {
  readonly from: number
  readonly to: number
  readonly step: number
}

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

export const countOf = ({ from, to, step }: TryRange): number => Math.floor((to - from) / step + STEP_SLACK) + 1
