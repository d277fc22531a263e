import { along } from "../../core/solids"
import { viewAxes } from "./fit"
import type { View } from "./view"

const TURN = (5 * Math.PI) / 180
/** Part of the distance to the bow that one key press moves or nears. */
const STEP = 0.06
const HIGHEST = Math.PI / 2 - 1e-3
export const NEAREST = 0.25
export const FURTHEST = 12

/** What the keys do, for people and for assistive tools. */
export const keyHelp =
  "Arrow keys turn the view, Shift with arrow keys moves it, plus and minus zoom, Home shows the whole bow from the side."

/** The view after a key press, or null for a key that does not move the camera. */
export function keyView(view: View, key: string, shift: boolean): View | null {
  const { azimuth, elevation, distance, target } = view
  const { right, up } = viewAxes(azimuth, elevation)
  const move = (dx: number, dy: number): View => ({
    ...view,
    target: along(along(target, right, dx * STEP * distance), up, dy * STEP * distance),
  })
  const turn = (da: number, de: number): View => ({
    ...view,
    azimuth: azimuth + da * TURN,
    elevation: Math.min(HIGHEST, Math.max(-HIGHEST, elevation + de * TURN)),
  })
  const near = (factor: number): View => ({
    ...view,
    distance: Math.min(FURTHEST, Math.max(NEAREST, distance * factor)),
  })
  // The bow follows the arrow, as it follows a finger: to the right turns its near side right.
  switch (key) {
    case "ArrowLeft":
      return shift ? move(1, 0) : turn(1, 0)
    case "ArrowRight":
      return shift ? move(-1, 0) : turn(-1, 0)
    case "ArrowUp":
      return shift ? move(0, -1) : turn(0, -1)
    case "ArrowDown":
      return shift ? move(0, 1) : turn(0, 1)
    case "+":
    case "=":
      return near(1 - STEP * 2)
    case "-":
    case "_":
      return near(1 / (1 - STEP * 2))
    default:
      return null
  }
}
