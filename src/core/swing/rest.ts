import type { Vec3 } from "../solids"
import type { Joint } from "./pendulum"

export interface SwingRest {
  /** Unit direction from the hinge to the bob, bow axes. */
  readonly direction: Vec3
  /** It leans on its stop: it no longer hangs plumb and counts as locked. */
  readonly onStop: boolean
}

const DOWN: Vec3 = [0, -1, 0]

/**
 * Where a swing weight rests: along gravity (unit, bow axes), for a hinge along gravity's part in the bow's
 * x-y plane, no further than `stop` (rad) from the bow's downward direction.
 *
 * Gravity square to a hinge's plane, or straight up with a ball, leaves the direction open; it is then
 * taken as the bow's down (hinge) or as leaning forward to the stop (ball upside down).
 */
export function swingRest(gravity: Vec3, joint: Joint, stop: number): SwingRest {
  return joint === "hinge" ? hingeRest(gravity, stop) : ballRest(gravity, stop)
}

function hingeRest(gravity: Vec3, stop: number): SwingRest {
  if (gravity[0] === 0 && gravity[1] === 0) return { direction: DOWN, onStop: false }
  const wanted = Math.atan2(gravity[0], 0 - gravity[1])
  const angle = Math.max(-stop, Math.min(stop, wanted))
  return { direction: [Math.sin(angle), 0 - Math.cos(angle), 0], onStop: angle !== wanted }
}

function ballRest(gravity: Vec3, stop: number): SwingRest {
  const across = Math.hypot(gravity[0], gravity[2])
  const wanted = Math.atan2(across, 0 - gravity[1])
  if (wanted <= stop) return { direction: gravity, onStop: false }
  const [x, z] = across > 0 ? [gravity[0] / across, gravity[2] / across] : [1, 0]
  return { direction: [Math.sin(stop) * x, 0 - Math.cos(stop), Math.sin(stop) * z], onStop: true }
}
