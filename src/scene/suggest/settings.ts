import type { TargetKey } from "./targets"

/**
 * How far inside its target a suggestion aims, in the target's unit: about what a hook and a kitchen scale tell
 * apart (common practice, no source), so that a setup as suggested measures as inside. A narrower range than four
 * margins gets a quarter of its width.
 */
export const MARGIN: Readonly<Record<TargetKey, number>> = {
  forwardMm: 0.5,
  upMm: 0.5,
  sideMm: 0.2,
  massMaxG: 1,
  netLiftNm: 0.01,
}
export const MARGIN_SHARE = 1 / 4

/** The largest single change still called one change to this setup rather than another setup (common practice, no source). */
export const MOST_DISCS = 12
/** Degrees. */
export const LARGEST_TURN = 45
/** mm, and as a share of the present length: what a box of rods and extenders spans. */
export const LARGEST_SWAP = 300
export const LARGEST_SWAP_SHARE = 1 / 2

/** Extenders that a box holds, mm: up to about 8 in, an inch apart (common practice, no source). */
export const SHORTEST_EXTENDER = 50
export const LONGEST_EXTENDER = 200
export const EXTENDER_STEP = 25

export const SUGGESTIONS_PER_TARGET = 3
