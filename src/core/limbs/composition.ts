/**
 * Symmetric composition of the second-order leapfrog step, order 8 with 17 stages.
 *
 * Why this one: the limb's equations split into a part that changes only its angle and a part that changes only its
 * place, so every stage is exact, works in place and its derivative is one line; and all stage positions of this
 * scheme stay inside the step, so the stiffness is never asked for beyond the limb's ends.
 * Source: W. Kahan and R.-C. Li, "Composition constants for raising the orders of unconventional schemes for ordinary
 * differential equations", Mathematics of Computation 66 (1997) 1089-1099, method s17odr8a.
 */
const halfOfStages = [
  0.13020248308889008, 0.5611629817751084, -0.3894749626448473, 0.1588419065551556, -0.39590389413323757,
  0.1845396409783157, 0.258374387686322, 0.2950117236093103,
] as const
const middleStage = 1 - 2 * halfOfStages.reduce((sum, part) => sum + part, 0)

/** Share of one step moved by each of the 17 changes of place. */
export const driftShares: Float64Array = Float64Array.from([
  ...halfOfStages,
  middleStage,
  ...[...halfOfStages].reverse(),
])

/** Share of one step of the 18 changes of angle: before, between and after the changes of place. */
export const kickShares: Float64Array = Float64Array.from({ length: driftShares.length + 1 }, (_, stage) => {
  return ((driftShares[stage - 1] ?? 0) + (driftShares[stage] ?? 0)) / 2
})

/** Where in the step each change of angle happens: the sum of the changes of place before it. */
export const stageStarts: Float64Array = Float64Array.from({ length: driftShares.length + 1 }, (_, stage) =>
  driftShares.subarray(0, stage).reduce((sum, share) => sum + share, 0),
)
