/** Marks finer than this are told apart by nobody. */
const MOST = 6
/** Of a step, for what float64 leaves behind the point. */
const NOISE = 1e-6

/** As many decimals as an axis needs to say its evenly spaced marks exactly: three for 0.125, 0.150, 0.175. */
export function markDecimals(marks: readonly number[]): number {
  const step = Math.abs((marks[1] ?? 1) - (marks[0] ?? 0))
  for (let decimals = 0; decimals < MOST; decimals++) {
    const whole = step * 10 ** decimals
    if (whole >= 1 - NOISE && Math.abs(whole - Math.round(whole)) < NOISE * whole) return decimals
  }
  return MOST
}
