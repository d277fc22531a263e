import { RADIAN_PER_DEGREE as DEGREE } from "../core/constants"

/** The level place the archer stands on reaches this far before and behind the grip, m. */
export const TERRACE = 0.35

/** A steeper slope is drawn as one of this many degrees: nobody stands on it, and its far end would leave the picture. */
export const STEEPEST_DRAWN_DEG = 60

/** How much higher the hillside is at `forward`, m from the grip, than where the archer stands, m. A line rising by the slope on both sides. */
export function hillRise(forward: number, slopeDeg: number): number {
  const off = forward > TERRACE ? forward - TERRACE : forward < -TERRACE ? forward + TERRACE : 0
  return off * hillGradient(slopeDeg)
}

/** Rise of the drawn hillside per length forward. */
export const hillGradient = (slopeDeg: number): number =>
  Math.tan(Math.max(-STEEPEST_DRAWN_DEG, Math.min(STEEPEST_DRAWN_DEG, slopeDeg)) * DEGREE)

/** Forward ends of the hillside, m, where the line to the target ends at `to`: as far behind the archer, and a little beyond the target. */
export const hillSpan = (to: number): { readonly from: number; readonly to: number } => ({
  from: -Math.max(to, 2 * TERRACE),
  to: to + 0.3,
})
