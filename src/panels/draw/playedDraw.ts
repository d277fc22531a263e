/** How long a whole draw, the hold and a whole let-down take, s: an unhurried shot (common practice, no source). */
const DRAW_S = 1.8
const HOLD_S = 1.5

/** Stops where motion is not wanted: quarters of the draw. */
const STOPS = 4

/**
 * Draw fraction at `elapsed` s of "draw, hold, let down" begun at the fraction `from`; null once it is over. Drawing
 * and letting down start and end without a jerk and take their part of a whole draw's time.
 */
export function playedDraw(elapsed: number, from: number): number | null {
  const drawing = DRAW_S * (1 - from)
  const held = elapsed - drawing
  if (held < 0) return from + (1 - from) * smooth(elapsed / drawing)
  if (held <= HOLD_S) return 1
  const back = held - HOLD_S
  return back < drawing ? 1 - (1 - from) * smooth(back / drawing) : null
}

/** The nearest of a few stops, for those who asked their device for less motion. */
export const steppedDraw = (fraction: number): number => Math.round(fraction * STOPS) / STOPS

const smooth = (u: number): number => u * u * (3 - 2 * u)
