/** A square matrix, row by row. */
export type Square = readonly Float64Array[]

/** Largest row sum after scaling: the series below then gains more than a digit a term. */
const SCALED_TO = 0.5
/** 0.5¹⁸/18! is below 1e-21, past the last bit of a number near 1. */
const TERMS = 18

/**
 * e^A of an n × n matrix by its Taylor series, scaled down by a power of two and squared back up (Moler and Van Loan,
 * "Nineteen dubious ways to compute the exponential of a matrix", SIAM Review 45, 2003, method 3). Relative error about
 * 1e-15 times the largest row sum of A. @throws RangeError for an entry that is not finite.
 */
export function exponential(a: Square): Square {
  const n = a.length
  const norm = Math.max(...a.map((row) => row.reduce((sum, value) => sum + Math.abs(value), 0)))
  if (!Number.isFinite(norm)) throw new RangeError("the exponential of a matrix needs finite entries")
  const halvings = Math.max(0, Math.ceil(Math.log2(norm / SCALED_TO)))
  const scaled = a.map((row) => row.map((value) => value / 2 ** halvings))
  // Horner's form: 1 + A(1 + A/2(1 + A/3( … ))).
  let sum = identity(n)
  for (let term = TERMS; term >= 1; term--) {
    const product = times(scaled, sum)
    sum = product.map((row, i) => row.map((value, j) => value / term + (i === j ? 1 : 0)))
  }
  for (let k = 0; k < halvings; k++) sum = times(sum, sum)
  return sum
}

export const identity = (n: number): Square =>
  Array.from({ length: n }, (_, i) => Float64Array.from({ length: n }, (_, j) => (i === j ? 1 : 0)))

export function times(a: Square, b: Square): Square {
  const n = a.length
  return a.map((row) => {
    const out = new Float64Array(n)
    for (let k = 0; k < n; k++) {
      const factor = row[k]!
      if (factor === 0) continue
      for (let j = 0; j < n; j++) out[j]! += factor * b[k]![j]!
    }
    return out
  })
}
