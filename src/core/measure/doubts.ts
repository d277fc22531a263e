import type { MeasuredBody } from "./body"
import { type Fit, fitBody } from "./fit"
import type { Observation } from "./observation"
import { OUTLIER } from "./settings"
import type { Decompose } from "./system"

/** Whether readings contradict each other, and which of them could be the wrong one. */
export interface Doubts {
  /** The readings disagree more than their errors allow, as a whole or at one of them. */
  readonly doubtful: boolean
  /**
   * Places of the observations without any one of which the others agree, in the order of the list. Of several the
   * numbers cannot tell which is wrong. Empty where all is well, and where more than one must be wrong.
   */
  readonly suspects: readonly number[]
}

type Judged = Pick<Fit, "converged" | "chiSquared" | "freedom" | "rows">

/** A fit that came to rest, with a likely sum of squared misses and no reading beyond OUTLIER. */
const agrees = ({ converged, chiSquared, freedom, rows }: Judged): boolean =>
  converged &&
  chiSquared <= disagreement(freedom) &&
  rows.every(({ studentised }) => Math.abs(studentised ?? 0) <= OUTLIER)

/**
 * The doubts about a fit of `seen` from `assumed`. Where it does not agree, it is fitted anew without each observation in
 * turn: the largest residual alone need not be that of the wrong reading, as readings that only check each other share it.
 */
export function doubtsOf(
  fit: Judged,
  seen: readonly Observation[],
  assumed: MeasuredBody,
  decompose: Decompose,
): Doubts {
  if (agrees(fit)) return { doubtful: false, suspects: [] }
  const mends = (place: number) =>
    agrees(
      fitBody(
        seen.filter((_, other) => other !== place),
        assumed,
        decompose,
      ),
    )
  // A single reading contradicts none.
  const places = seen.length > 1 ? seen.map((_, place) => place) : []
  return { doubtful: true, suspects: places.filter(mends) }
}

/**
 * Chi squared that one sound session in a hundred exceeds, by Wilson and Hilferty's cube root of it (1931; within 2 % of
 * the table from one degree of freedom on). Without any freedom nothing should be missed: that of one is allowed.
 */
export function disagreement(freedom: number): number {
  const NINETY_NINE = 2.3263478740408408
  const degrees = Math.max(1, freedom)
  const spread = 2 / (9 * degrees)
  return degrees * (1 - spread + NINETY_NINE * Math.sqrt(spread)) ** 3
}
