import { type MassMoments, NO_MOMENTS, scaleMoments } from "../../core/sensitivity"
import type { Vec3 } from "../../core/solids"
import { RADIAN_PER_DEGREE } from "../../core/constants"
import { GRAM, MM } from "../assemble"

/** Rates of the whole bow's mass moments per file unit of each slot, by slot key. */
export type Rates = Map<string, MassMoments>

/** Files one owner's rates under its slot keys. */
export function put(into: Rates, owner: string, rates: Readonly<Record<string, MassMoments>>): void {
  for (const [name, rate] of Object.entries(rates)) into.set(`${owner}:${name}`, rate)
}

export const perGram = (rate: MassMoments): MassMoments => scaleMoments(rate, GRAM)
export const perMm = (rate: MassMoments): MassMoments => scaleMoments(rate, MM)
export const perDegree = (rate: MassMoments): MassMoments => scaleMoments(rate, RADIAN_PER_DEGREE)

/** For what is written down beside a part but weighs and moves nothing: stiffness, ratings, friction. */
export const WEIGHS_NOTHING = NO_MOMENTS

export const UNIT_AXES: readonly [Vec3, Vec3, Vec3] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
]
