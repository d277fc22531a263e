import { useSyncExternalStore } from "react"
import type { Vec3 } from "../core/solids"

/** Takes a place on the bow that was tapped in the picture, bow axes, m. */
export type TakePoint = (at: Vec3) => void

let taker: TakePoint | null = null
const listeners = new Set<() => void>()

/** From now on the next tap on the bow is a place for `take`, and not a choice of a part; null ends the asking. */
export function askForPoint(take: TakePoint | null): void {
  taker = take
  for (const listener of [...listeners]) listener()
}

/** Hands a tapped place to whoever asked for one; false when nobody did. */
export function givePoint(at: Vec3): boolean {
  const take = taker
  if (take === null) return false
  askForPoint(null)
  take(at)
  return true
}

export const pointAsked = (): boolean => taker !== null

const subscribe = (listener: () => void) => {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

/** Whether a place is asked for now. */
export const usePicking = (): boolean => useSyncExternalStore(subscribe, pointAsked)
