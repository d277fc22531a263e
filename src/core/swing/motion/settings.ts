/**
 * Longest step of the integrator, s: four to a 60 Hz frame. With it the fourth-order method is well inside what the
 * eye or a trace can show; the tests pin its energy drift and its distance from an independent solver.
 */
export const LONGEST_STEP = 1 / 240

/**
 * Longest step as a part of a radian of the small swing, for short quick weights: keeps the energy drift at an
 * amplitude of 170° under 1e-6 of the energy in 100 periods, tested.
 */
export const STEP_IN_SWING = 1 / 28

/** Halvings that locate a stop or a reversal inside a step: 2^-40 of a step is below 1e-14 s. */
export const HALVINGS = 40

/** A frame that ends within this part of a step of a whole number of steps has that number: float64 rounding. */
export const STEP_SLACK = 1e-9

/** Stops and reversals followed inside one step; a weight still undecided after that stays put until its end. */
export const EVENTS_IN_STEP = 16
