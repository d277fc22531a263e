/**
 * How much longer a pendulum takes at an amplitude (rad, below π) than at a vanishing one: (2/π)·K(sin²(θ/2)), which is
 * 1 over the arithmetic-geometric mean of 1 and cos(θ/2) (Gauss; Abramowitz & Stegun 17.6). Exact: at 10° it is 1.0019,
 * so that up to there the correction is less than any stopwatch sees. Infinite at π, where it never comes back.
 */
export function amplitudeStretch(amplitude: number): number {
  let a = 1
  let b = Math.max(0, Math.cos(amplitude / 2))
  // The mean doubles its right digits each time; from any cosine float64 can hold 12 rounds are plenty.
  for (let round = 0; round < 12; round++) [a, b] = [(a + b) / 2, Math.sqrt(a * b)]
  return b === 0 ? Number.POSITIVE_INFINITY : 1 / a
}
