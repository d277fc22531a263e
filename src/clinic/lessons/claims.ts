import { type ReadoutKey, readouts } from "../../describe/readouts"
import type { Figures } from "../../scene/figures"
import type { Claim } from "./schema"

/**
 * "Alike" is a change by no more than this share of what was there before: nobody feels a fiftieth in the hand.
 * A choice of ours, no source.
 */
export const ALIKE_SHARE = 0.02

/** A number of a setup in the report's unit; null where it has none. */
export const numberOf = (figures: Figures, key: ReadoutKey): number | null => readouts[key].of(figures)

/** How many of its three forms a claim is in; it needs one. */
export const formsOf = ({ becomes, times, changes }: Claim): number =>
  [becomes, times, changes].filter((form) => form !== undefined).length

/**
 * Whether a claim is what the numbers say. `before` and `after` in the report's unit. A multiple of nothing is no
 * number, so `times` of a number that was nothing is false.
 */
export function holds({ becomes, times, changes }: Claim, before: number, after: number): boolean {
  const change = after - before
  if (changes !== undefined) return within(change, changes)
  if (times !== undefined) return before !== 0 && within(after / before, times)
  const alike = ALIKE_SHARE * Math.abs(before)
  if (becomes === "more") return change > alike
  if (becomes === "less") return change < -alike
  return becomes === "alike" && Math.abs(change) <= alike
}

/** Whether a number lies in a span, its ends included. */
export const within = (value: number, [from, to]: readonly [number, number]): boolean => value >= from && value <= to
