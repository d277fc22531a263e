import { along, distance, type Vec3 } from "../core/solids"
import type { WeighedPart } from "../scene/evaluate"

/** How far a chain's outer end is from the point it turns about, m; 0 for a chain without length. */
export function chainReach(parts: readonly WeighedPart[], chain: string, about: Vec3): number {
  let reach = 0
  for (const { path, axis } of parts) {
    if (axis === undefined || !ofChain(path, chain)) continue
    reach = Math.max(reach, distance(about, along(axis.start, axis.direction, axis.length)))
  }
  return reach
}

/** A path that is one step inside the chain, not on an arm of it. */
const ofChain = (path: string, chain: string): boolean =>
  path.startsWith(`${chain}/`) && !path.slice(chain.length + 1).includes("/")

/** Shortest radii, m, at which turning a short chain can still be seen and aimed. */
const LEAST = { far: 0.11, near: 0.07 }

/** Where along a chain of this reach the handles of its two angles stand: apart, and off its ends. */
export const turningRadii = (reach: number): { far: number; near: number } => ({
  far: Math.max(LEAST.far, reach * 0.66),
  near: Math.max(LEAST.near, reach * 0.4),
})
