import { type MeasuredBody, plausible } from "./body"
import type { Observation } from "./observation"
import { NINETY_FIVE, DETERMINED_WITHIN } from "./settings"
import { type Row, rowsOf } from "./rows"

/**
 * Singular values of a matrix with at least as many rows as columns, given by rows: the values in descending order,
 * and the orthonormal left and right vectors as columns of `left` and `right`. The package that does it is
 * wrapped in `src/scene/measure/decompose.ts`.
 */
export type Decompose = (rows: readonly (readonly number[])[]) => {
  readonly values: readonly number[]
  readonly left: readonly (readonly number[])[]
  readonly right: readonly (readonly number[])[]
}

/** One number against what a body says it should be, in whatever unit, and the rates of the latter by the unknowns. */
export type Equation = Pick<Row, "residual" | "error" | "gradient">

/** Equations ready to be solved: each divided by its error. */
export interface System<E extends Equation = Equation> {
  readonly rows: readonly E[]
  /** The sum of their squares is what the fit makes least. */
  readonly misses: readonly number[]
  /** One column an unknown, per plausible span. */
  readonly jacobian: readonly (readonly number[])[]
}

export const systemOf = <E extends Equation>(rows: readonly E[]): System<E> => ({
  rows,
  misses: rows.map(({ residual, error }) => residual / error),
  jacobian: rows.map(({ gradient, error }) => gradient.map((rate, k) => (rate * plausible[k]!) / error)),
})

/** The rows of all observations, each with the place of its observation in the list. */
export const readings = (seen: readonly Observation[], body: MeasuredBody): (Row & { readonly of: number })[] =>
  seen.flatMap((one, of) => rowsOf(one, body).map((row) => ({ ...row, of })))

/** Whether there is a number everywhere: a bow neither swings about its own balance point nor with no inertia. */
export const isFiniteSystem = ({ misses, jacobian }: System): boolean =>
  [misses, ...jacobian].every((row) => row.every(Number.isFinite))

/** A direction of the unknowns in plausible spans, of length one, and its standard deviation as the readings have it. */
export interface Direction {
  readonly along: readonly number[]
  readonly deviation: number
  /** Components of the misses along it. */
  readonly miss: number
  /** How much of each row's own reading goes into it. */
  readonly left: readonly number[]
}

/** The jacobian's directions, best determined first, parted into those the readings determine and those they do not. */
export function directions(
  { jacobian, misses }: Pick<System, "jacobian" | "misses">,
  decompose: Decompose,
): { readonly known: Direction[]; readonly unknown: Direction[]; readonly condition: number } {
  const width = plausible.length
  const filled = [
    ...jacobian,
    ...Array.from({ length: Math.max(0, width - jacobian.length) }, () => plausible.map(() => 0)),
  ]
  const { values, left, right } = decompose(filled)
  const all = values.map((value, k): Direction => {
    const column = left.slice(0, jacobian.length).map((row) => row[k]!)
    return {
      along: right.map((row) => row[k]!),
      deviation: 1 / value,
      miss: column.reduce((sum, part, i) => sum + part * misses[i]!, 0),
      left: column,
    }
  })
  const known = all.filter(({ deviation }) => NINETY_FIVE * deviation <= DETERMINED_WITHIN)
  const unknown = all.filter(({ deviation }) => !(NINETY_FIVE * deviation <= DETERMINED_WITHIN))
  return { known, unknown, condition: known.length === 0 ? 1 : values[0]! * known.at(-1)!.deviation }
}

/** The body moved by a step in plausible spans. */
export const stepped = (vector: readonly number[], step: readonly number[]): number[] =>
  vector.map((value, k) => value + step[k]! * plausible[k]!)
