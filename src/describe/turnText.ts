import { beside } from "../words/beside"
import { fixed } from "./format"

/**
 * "2.4× the bare bow": turn resistance as a multiple of the bow's own without its rig. A dash where the bare bow has
 * none to compare with.
 */
export const multipleText = (inertia: number, bare: number): string =>
  bare > 0 ? beside.bare(`${fixed(inertia / bare, 2)}×`) : "–"

/**
 * The end of a scale of multiples that holds `largest`: one of a few, far apart, so that it seldom changes under a
 * dragging hand.
 */
export function multipleScale(largest: number): number {
  let end = 3
  while (end < largest && end < LARGEST_SCALE) end *= 2
  return end
}

/** Beyond this a bar is simply full. */
const LARGEST_SCALE = 3 * 2 ** 10
