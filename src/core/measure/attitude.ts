import { distance, scale, subtract, type Vec3 } from "../solids"

export interface Attitude {
  /** rad. */
  readonly slope: number
  readonly cant: number
}

/**
 * How a bow with its balance point at `centre` comes to rest hung from `at`; null where both coincide and it rests any
 * way. The inverse of gravity in a pose: ĝ = (-sin s, -cos s cos c, cos s sin c). Hung straight by its front or back
 * no cant can be told and 0 is given.
 */
export function hangingAttitude(at: Vec3, centre: Vec3): Attitude | null {
  const apart = distance(at, centre)
  if (apart === 0) return null
  const [x, y, z] = scale(subtract(centre, at), 1 / apart)
  const level = Math.hypot(y, z)
  // Subtracting from zero and adding zero keep +0.
  return { slope: Math.atan2(0 - x, level), cant: level === 0 ? 0 : Math.atan2(z, 0 - y) + 0 }
}
