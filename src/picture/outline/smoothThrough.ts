/** A smooth function through given places: x ascending and distinct. */
export interface Knot {
  readonly at: number
  readonly value: number
}

/**
 * Monotone cubic through the knots (Fritsch & Carlson 1980, "Monotone piecewise cubic interpolation"; the slopes
 * here are the harmonic means of their section on simple choices): smooth, and never beyond neighbouring knots,
 * so that an outline drawn with it has no bulge nobody asked for. Level beyond the ends. No knots: 0.
 */
export function smoothThrough(knots: readonly Knot[]): (at: number) => number {
  const first = knots[0]
  const last = knots.at(-1)
  if (first === undefined || last === undefined) return () => 0
  const rises = knots.slice(1).map((knot, index) => (knot.value - knots[index]!.value) / (knot.at - knots[index]!.at))
  const slopes = knots.map((_, index) => {
    const before = rises[index - 1]
    const after = rises[index]
    if (before === undefined || after === undefined) return 0
    return before * after > 0 ? (2 * before * after) / (before + after) : 0
  })
  return (at) => {
    if (at <= first.at) return first.value
    if (at >= last.at) return last.value
    let index = 0
    while (knots[index + 1]!.at < at) index++
    const [a, b] = [knots[index]!, knots[index + 1]!]
    const span = b.at - a.at
    const u = (at - a.at) / span
    const [u2, u3] = [u * u, u * u * u]
    return (
      (2 * u3 - 3 * u2 + 1) * a.value +
      (u3 - 2 * u2 + u) * span * slopes[index]! +
      (3 * u2 - 2 * u3) * b.value +
      (u3 - u2) * span * slopes[index + 1]!
    )
  }
}
