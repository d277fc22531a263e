import { neared, shifted, turned } from "./moves"
import type { View } from "./view"

const TURN = (5 * Math.PI) / 180
/** Part of the distance to the bow that one key press moves it. */
const STEP = 0.06
const NEARER = 0.88

/** The view after a key press, or null for a key that does not move the camera; `picture3d.keys` says them. */
export function keyView(view: View, key: string, shift: boolean): View | null {
  const step = STEP * view.distance
  // The bow follows the arrow, as it follows a finger: to the right turns its near side right.
  switch (key) {
    case "ArrowLeft":
      return shift ? shifted(view, step, 0) : turned(view, TURN, 0)
    case "ArrowRight":
      return shift ? shifted(view, -step, 0) : turned(view, -TURN, 0)
    case "ArrowUp":
      return shift ? shifted(view, 0, -step) : turned(view, 0, -TURN)
    case "ArrowDown":
      return shift ? shifted(view, 0, step) : turned(view, 0, TURN)
    case "+":
    case "=":
      return neared(view, NEARER)
    case "-":
    case "_":
      return neared(view, 1 / NEARER)
    default:
      return null
  }
}
