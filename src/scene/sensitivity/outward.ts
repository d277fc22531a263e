import { type MassMoments, movedRates, NO_MOMENTS, sumMoments, turnedRates } from "../../core/sensitivity"
import { cross, subtract, type Vec3 } from "../../core/solids"

/**
 * Everything outward of a place on a chain. What is coaxial turns with the chain; what is only carried keeps its
 * direction in the bow's frame when the chain turns: a V-bar's arms, whose angles are the bow's, and a swing weight,
 * which follows gravity.
 */
export interface Outward {
  readonly turning: MassMoments
  readonly carried: readonly Carried[]
}

export interface Carried {
  /** The point of the chain that carries it, m, bow axes. */
  readonly at: Vec3
  readonly body: MassMoments
}

export const NOTHING_OUTWARD: Outward = { turning: NO_MOMENTS, carried: [] }

export const withTurning = (outward: Outward, body: MassMoments): Outward => ({
  ...outward,
  turning: sumMoments(outward.turning, body),
})

export const withCarried = (outward: Outward, ...carried: readonly Carried[]): Outward => ({
  ...outward,
  carried: [...outward.carried, ...carried],
})

export const totalOf = ({ turning, carried }: Outward): MassMoments =>
  sumMoments(turning, ...carried.map(({ body }) => body))

/** Rates per rad while the chain turns at the unit rate `turn` about `pivot` (m). */
export const turnedOutward = ({ turning, carried }: Outward, turn: Vec3, pivot: Vec3): MassMoments =>
  sumMoments(
    turnedRates(turning, turn, pivot),
    ...carried.map(({ at, body }) => movedRates(body, cross(turn, subtract(at, pivot)))),
  )
