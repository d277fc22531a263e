import type { MassMoments } from "../sensitivity"
import type { Vec3 } from "../solids"

/**
 * One reading of the real bow, SI, bow axes. `rest` is everything that was on the bow besides the measured body, known
 * from elsewhere. Every error is one standard deviation of the reading.
 */
export type Observation = Weighed | Hung | Swung | Twisted

interface Seen {
  readonly rest: MassMoments
}

/** Put on a scale. */
export interface Weighed extends Seen {
  readonly kind: "scale"
  /** kg. */
  readonly mass: number
  readonly massError: number
}

/**
 * Hung from a point, or balanced on it, at rest: the balance point is on the plumb line through the point. The tilt is
 * that of the whole bow, slope and cant as in a pose; rad. Its error is that of the plumb line's direction in the bow.
 */
export interface Hung extends Seen {
  readonly kind: "hang"
  readonly at: Vec3
  readonly slope: number
  /** Null where only the slope was read: nothing is then said across. */
  readonly cant: number | null
  readonly tiltError: number
  /** How far off the point may be, m. */
  readonly pointError: number
}

/** Swinging freely about a level axis through a point. */
export interface Swung extends Seen {
  readonly kind: "swing"
  readonly at: Vec3
  /** Unit vector. */
  readonly axis: Vec3
  /** s. */
  readonly period: number
  readonly periodError: number
  /** From the middle to the turning point, rad. */
  readonly amplitude: number
  readonly pointError: number
}

/**
 * Twisting to and fro about the plumb line through the balance point, hung on two or three equal upright lines, all the
 * same distance from it (unequal ones, two: the root of the product). Swings are small.
 */
export interface Twisted extends Seen {
  readonly kind: "twist"
  /** The plumb line in the bow, unit vector. */
  readonly axis: Vec3
  readonly period: number
  readonly periodError: number
  /** Of each line, m. */
  readonly lineLength: number
  /** From each line to the balance point, m. */
  readonly radius: number
  readonly radiusError: number
}
