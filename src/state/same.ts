import type { Scene } from "../scene/schema"

/**
 * Whether two JSON values are equal: numbers, text, lists and plain objects, keys in any order. Parts that both share,
 * as successive scenes do, are not walked.
 */
export function sameValue(a: unknown, b: unknown): boolean {
  if (a === b) return true
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false
  if (Array.isArray(a) !== Array.isArray(b)) return false
  const [here, there] = [a as Readonly<Record<string, unknown>>, b as Readonly<Record<string, unknown>>]
  const keys = Object.keys(here)
  return (
    keys.length === Object.keys(there).length && keys.every((key) => key in there && sameValue(here[key], there[key]))
  )
}

/** Whether two scenes are equal in all but how the bow is held: its draw, slope and cant. */
export const sameButPose = (a: Scene, b: Scene): boolean => sameValue({ ...a, pose: b.pose }, b)
