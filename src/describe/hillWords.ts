import { fixed } from "./format"
import { slopeText } from "./poseText"

/** "target up the hill, 20°", "target down the hill, 12.5°": beside the target that stands on a drawn hillside. */
export function hillTargetLabel(slopeDeg: number): string {
  const [size = ""] = slopeText(slopeDeg).split(" ")
  return `target ${slopeDeg > 0 ? "up" : "down"} the hill, ${size}`
}

/** What the hillside in the picture says, in a sentence; on the level too. */
export function hillSentence(slopeDeg: number): string {
  const [size = "", way] = slopeText(slopeDeg).split(" ")
  if (way === undefined) return "Level ground: the target is as high as the archer."
  const rises = way === "up" ? "rises" : "falls"
  const front = way === "up" ? "raised" : "lowered"
  return `The hillside ${rises} ${size} toward the target, so the front is ${front} by as much. The bow turns; gravity and the plumb line do not.`
}

/** Beside the dashed outline of a swing weight in the picture. */
export const LOCKED = "locked"

/** "in motion, bow 12.3° up": beside a bow that plays a motion; one decimal, so that the words keep their width. */
export function motionLabel(slopeDeg: number): string {
  const way = slopeDeg < 0 ? "down" : "up"
  return `in motion, bow ${fixed(Math.abs(slopeDeg), 1)}° ${way}`
}
