import type { Vec3 } from "../solids"

/** Where an arrow lands beside where it was aimed, m on the target's face. */
export interface Landing {
  readonly right: number
  readonly up: number
}

/**
 * Where an arrow goes that leaves along a bow turned by `angles` (rad about x, y, z) when it leaves: straight, as from a
 * rigid bow; roll alone moves nothing. An estimate of the aim's error, not of the arrow's flight. `distance` in m.
 */
export function landing([, yaw, pitch]: Vec3, distance: number): Landing {
  // Yaw turns the front to the left: a positive turn about the axis that points up takes x toward -z.
  return { right: 0 - distance * Math.tan(yaw), up: distance * Math.tan(pitch) }
}
