/**
 * What a part of a setup adds to the whole, in this order: mass (kg), first moments about the grip along x, y, z
 * (kg·m), moments of inertia about the grip's x, y, z axes: roll, yaw, pitch (kg·m²). All are sums over the parts.
 */
export const SUMS = 7
export const MASS = 0
/** First moments: FIRST + 0 … 2 for x, y, z. */
export const FIRST = 1
export const ROLL = 4
export const YAW = 5
export const PITCH = 6

/** How far the rig sticks out, m: forward of the grip, and to either side of it. The whole's is the largest part's. */
export const REACHES = 2
export const FORWARD_REACH = 0
export const SIDE_REACH = 1

/**
 * Limits are met when they are missed by no more than this: SI units of each (m, kg, N·m, kg·m²). Far below anything
 * measured, and above float64 rounding, so that a value standing exactly on its limit is inside.
 */
export const LIMIT_SLACK = 1e-12

/**
 * Bounds of many setups at once are loosened by this much, SI units, before anything is left out on their account:
 * sums of some tens of parts of up to some hundred kg·m² round to about 1e-13 of their last digit's worth.
 */
export const BOUND_SLACK = 1e-10

/**
 * Scores are compared in whole multiples of this (half-widths, kg, kg·m², m²), so that two setups of the same parts
 * on swapped sides count as equal, whatever order their masses were summed in.
 */
export const SCORE_STEP = 1e-9

/** A target narrower than this is scored as if it were this wide: half-widths in m, and in N·m for the net lift. */
export const LEAST_HALF_WIDTH = 5e-4
export const LEAST_HALF_LIFT = 5e-3
