import { along, dot, subtract, type Vec3 } from "../core/solids"
import type { WeighedPart } from "../scene/evaluate"

/**
 * The place meant by a tap on a part's surface at `at` (bow axes, m): on a piece of a chain its axis, where a cord around
 * it hangs; on limbs and string their plane; on anything else the surface itself.
 */
export function tappedPlace({ axis, kind }: Pick<WeighedPart, "axis" | "kind">, at: Vec3): Vec3 {
  if (axis !== undefined) {
    const far = dot(subtract(at, axis.start), axis.direction)
    return along(axis.start, axis.direction, Math.min(axis.length, Math.max(0, far)))
  }
  return kind === "limbs" || kind === "string" ? [at[0], at[1], 0] : at
}
