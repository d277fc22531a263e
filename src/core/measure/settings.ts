/** Everything by which a fit is judged, in one place. */

/** Standard deviations either side that hold 95 % of a normal error. The errors are stated, not estimated: no Student's t. */
export const NINETY_FIVE = 1.959963984540054

/**
 * A direction of the unknowns counts as determined when the readings place it, at 95 %, within the plausible span of
 * body.ts: what they say of it is then more than what is known of any bow.
 */
export const DETERMINED_WITHIN = 1

/** Studentised residual beyond which readings are in doubt: less than 3 of 1000 sound ones are as far off. */
export const OUTLIER = 3

/** A reading whose residual the fit leaves less than this share of free is checked by no other one. */
export const UNCHECKED = 1e-6

/** Share of a number, squared, that the readings must say at least for it to count as known in part. */
export const SOME_OF_IT = 1e-4

/** Steps of the fit, and the step, in plausible spans, that is none: far below what any reading tells. */
export const MOST_STEPS = 60
export const STILL = 1e-10

/** A body may have at least this mass, kg: below it nothing has a centre. */
export const LEAST_MASS = 1e-3
