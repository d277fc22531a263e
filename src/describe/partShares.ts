import type { Evaluation } from "../scene/evaluate"
import { fixed } from "./format"
import { roundedToSum } from "./roundedToSum"

/**
 * Smallest nose-down moment of the whole bow of which a share is said, N·m: a few grams at the end of a rod. Below, parts
 * that cancel would each be called thousands of per cent.
 */
const LEAST_TO_SHARE = 0.05

let last: { readonly now: Evaluation["now"]; readonly shares: ReadonlyMap<string, string> | null } | null = null

/**
 * Each part's share of the whole nose-down moment at the pose, "37 %", by part path; rounded so that they add up to
 * 100 % wherever they are read. Null where the whole is too small to share.
 */
export function partShares({ now }: Evaluation): ReadonlyMap<string, string> | null {
  if (last?.now === now) return last.shares
  const whole = now.parts.reduce((sum, { noseDown }) => sum + noseDown, 0)
  const shares = Math.abs(whole) < LEAST_TO_SHARE ? null : sharesOf(now.parts, whole)
  last = { now, shares }
  return shares
}

function sharesOf(parts: Evaluation["now"]["parts"], whole: number): ReadonlyMap<string, string> {
  const rounded = roundedToSum(
    parts.map(({ noseDown }) => (100 * noseDown) / whole),
    0,
  )
  return new Map(parts.map(({ path }, index) => [path, percentText(rounded[index]!)]))
}

export const percentText = (percent: number): string => `${fixed(percent, 0)}\u00a0%`
