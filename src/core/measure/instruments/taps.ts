/** What tapping once a swing says of the time. */
export interface Tapped {
  /** Whole swings between the first tap and the last. */
  readonly count: number
  /** Time of all of them, s, from the line through every tap and not the two ends alone. */
  readonly seconds: number
  /** Its standard deviation by the taps' own scatter, s; null with fewer than four taps. */
  readonly error: number | null
  /** Taps left out: within half a swing another tap was there already. */
  readonly doubled: number
  /** Swings without a tap, counted all the same. */
  readonly missed: number
}

/**
 * Reads taps, one each time the bow passes the same way, in ms of one clock, oldest first. A tap is given the number of
 * swings nearest to its time, so one left out or made twice does not shift the rest; the time of a swing is the slope of
 * the line through them (least squares, as in any statistics book). Null with fewer than two swings.
 */
export function readTaps(taps: readonly number[]): Tapped | null {
  const gaps = taps.slice(1).map((at, index) => at - taps[index]!)
  const usual = median(gaps.filter((gap) => gap > 0))
  if (usual === null) return null
  const numbered: { at: number; swing: number }[] = []
  let doubled = 0
  for (const at of taps) {
    const last = numbered.at(-1)
    const further = last === undefined ? 0 : Math.round((at - last.at) / usual)
    if (last !== undefined && further < 1) doubled++
    else numbered.push({ at, swing: (last?.swing ?? 0) + further })
  }
  const count = numbered.at(-1)!.swing
  if (count < 2) return null
  const n = numbered.length
  const mean = (of: (tap: { at: number; swing: number }) => number) =>
    numbered.reduce((sum, tap) => sum + of(tap), 0) / n
  const [middle, moment] = [mean(({ swing }) => swing), mean(({ at }) => at)]
  const across = numbered.reduce((sum, { swing }) => sum + (swing - middle) ** 2, 0)
  const slope = numbered.reduce((sum, { at, swing }) => sum + (swing - middle) * (at - moment), 0) / across
  const scatter = numbered.reduce((sum, { at, swing }) => sum + (at - moment - slope * (swing - middle)) ** 2, 0)
  const error = n < 4 ? null : (Math.sqrt(scatter / (n - 2) / across) * count) / 1000
  return { count, seconds: (slope * count) / 1000, error, doubled, missed: count + 1 - n }
}

function median(values: readonly number[]): number | null {
  if (values.length === 0) return null
  const sorted = [...values].sort((a, b) => a - b)
  const half = Math.floor(sorted.length / 2)
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2
}
