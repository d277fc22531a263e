import { STEADY_WITHIN, type Steadiness } from "../../core/measure/instruments"

/** A bow that was at rest has moved once it is this many times further about its mean than a resting one may be. */
const MOVED = 4

/**
 * Whether a rest has been announced, after one more reading: once it is there, and not again until the bow has clearly
 * moved. A sensor whose noise just passes the limit would else announce a new rest several times a second.
 */
export const announced = (before: boolean, { steady, spread }: Steadiness): boolean =>
  steady || (before && spread <= MOVED * STEADY_WITHIN)
