import type { Vec3 } from "../core/solids"

/** Takes a place on the bow that was tapped in the picture, bow axes, m. */
export type TakePoint = (at: Vec3) => void

let taker: TakePoint | null = null

/** From now on the next tap on the bow is a place for `take`, and not a choice of a part; null ends the asking. */
export function askForPoint(take: TakePoint | null): void {
  taker = take
}

/** Hands a tapped place to whoever asked for one; false when nobody did. */
export function givePoint(at: Vec3): boolean {
  const take = taker
  taker = null
  take?.(at)
  return take !== null
}

export const pointAsked = (): boolean => taker !== null
