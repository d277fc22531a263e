import { beside } from "../words/beside"
import { fixed, type Shown, shownUnit, type UnitChoice } from "./format"

/** A number of the setup beside, and how the present one differs from it. */
export interface BesideText {
  /** "58.0" */
  readonly other: string
  /** "+4.0", "±0": what is added to the other to get the present number, as both are shown. */
  readonly change: string
}

/**
 * The other setup's number and the difference to the present one, rounded as shown: the other's and the difference add
 * up to the present number on the screen.
 */
export function besideText(now: number, other: number, quantity: Shown, units: UnitChoice): BesideText {
  const { factor, decimals } = shownUnit(quantity, units)
  const rounded = (value: number) => Number((value * factor).toFixed(decimals))
  const change = rounded(now) - rounded(other)
  const text = fixed(change, decimals)
  const none = Number(change.toFixed(decimals)) === 0
  return { other: fixed(other * factor, decimals), change: none ? "±0" : change > 0 ? `+${text}` : text }
}

/** "held 58.0, change +4.0", or "there …" of one only looked at: for the eye and the ear alike. */
export function besideSentence({ other, change }: BesideText, which: "held" | "there" = "held"): string {
  return beside[which](other, change === "±0" ? beside.same : beside.change(change))
}

/** How the picture marks the other setup's balance point. */
export const HELD_POINT = beside.here
