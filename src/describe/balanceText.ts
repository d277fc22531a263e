import { localNumber } from "../words/numbers"
import { verdict as say } from "../words/verdict"
import type { Shown, UnitChoice } from "./format"
import { said, shownUnit } from "./format"

/** Where a value stands against what was asked of it. */
export type Standing = "inside" | "under" | "over" | "untargeted"

/** A value against its target, in words for the person at the bench. */
export interface Verdict {
  readonly standing: Standing
  /** "inside the target", "12.0 mm too far back", "no target set". */
  readonly words: string
  /** "target 40–80 mm"; null without one. */
  readonly target: string | null
}

/** What a verdict adds on a number that hangs on what was assumed of the riser. */
export const AS_ASSUMED = say.assumed

/** A verdict on a measured bow's number with that ±: one that no reading determines stands neither inside nor outside. */
export const withSpread = (verdict: Verdict, spread: number | undefined): Verdict =>
  spread === Number.POSITIVE_INFINITY
    ? { ...verdict, standing: "untargeted", words: `${verdict.words}, ${AS_ASSUMED}` }
    : verdict

/** Both ends belong to the target; in the file's unit of its quantity. */
export type Span = readonly [number, number]

/** What missing a target on either side is called. */
interface Misses {
  readonly under: string
  readonly over: string
}

/**
 * Nose-up or nose-down moment, N·m, that counts as balanced at full draw. At a holding force of 150 N it moves the
 * pressure point in the grip by a third of a millimetre, less than a hand is put back to (common practice, no source).
 */
export const BALANCED_NM = 0.05

/** Balance point ahead of the grip, mm, against its target. */
export const forwardVerdict = (mm: number, target: Span | undefined, units: UnitChoice): Verdict =>
  spanVerdict(mm, target, "length", say.forward, units)

/** Balance point above the grip, mm, against its target. */
export const upVerdict = (mm: number, target: Span | undefined, units: UnitChoice): Verdict =>
  spanVerdict(mm, target, "length", say.up, units)

/** Balance point to the right of the grip, mm, against its target. */
export const sideVerdict = (mm: number, target: Span | undefined, units: UnitChoice): Verdict =>
  spanVerdict(mm, target, "length", say.side, units)

/** Net lift at full draw, N·m, against its target. */
export const netLiftVerdict = (nm: number, target: Span | undefined, units: UnitChoice): Verdict =>
  spanVerdict(nm, target, "moment", say.lift, units)

/** What the front does at full draw if the hand lets it, from the net lift in N·m. */
export function netLiftWords(nm: number): string {
  if (Math.abs(nm) <= BALANCED_NM) return say.balanced
  return nm > 0 ? say.rises : say.drops
}

/** Mass in g against the most it may be. */
export function massVerdict(massG: number, maxG: number | undefined, units: UnitChoice): Verdict {
  if (maxG === undefined) return { standing: "untargeted", words: say.noLimit, target: null }
  const target = say.atMost(trimmed(maxG, "mass", units))
  if (massG <= maxG) return { standing: "inside", words: say.within, target }
  return { standing: "over", words: missed(massG - maxG, "mass", say.heavy, units), target }
}

function spanVerdict(
  value: number,
  span: Span | undefined,
  quantity: Shown,
  misses: Misses,
  units: UnitChoice,
): Verdict {
  if (span === undefined) return { standing: "untargeted", words: say.noTarget, target: null }
  const target = say.target(spanText(span, quantity, units))
  if (value < span[0]) {
    return { standing: "under", words: missed(span[0] - value, quantity, misses.under, units), target }
  }
  if (value > span[1]) {
    return { standing: "over", words: missed(value - span[1], quantity, misses.over, units), target }
  }
  return { standing: "inside", words: say.inside, target }
}

/** "40–80 mm", "−5 to 5 mm" where a dash would be read as a sign, "0 mm" for a target of one value. */
export function spanText([from, to]: Span, quantity: Shown, units: UnitChoice): string {
  const [low, high] = [bare(from, quantity, units), trimmed(to, quantity, units)]
  if (from === to) return high
  return from < 0 || to < 0 ? say.fromTo(low, high) : `${low}–${high}`
}

/** A miss, and which way. One so small that it would be shown as none is still a miss. */
function missed(by: number, quantity: Shown, way: string, units: UnitChoice): string {
  const { factor, decimals } = shownUnit(quantity, units)
  const smallest = 10 ** -decimals
  const shown = by * factor >= smallest / 2
  return say.missed(shown ? said(by, quantity, units) : say.lessThan(said(smallest / factor, quantity, units)), way)
}

/** A chosen number without the zeros that only a measured one needs. */
function trimmed(value: number, quantity: Shown, units: UnitChoice): string {
  const unit = shownUnit(quantity, units).unit
  const number = bare(value, quantity, units)
  return unit === "" ? number : `${number}\u00a0${unit}`
}

function bare(value: number, quantity: Shown, units: UnitChoice): string {
  const { factor, decimals } = shownUnit(quantity, units)
  return localNumber(String(Number((value * factor).toFixed(decimals)) || 0))
}
