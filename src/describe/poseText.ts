import { localNumber } from "../words/numbers"
import { pose } from "../words/pose"
import { fixed } from "./format"

/** How far the bow is drawn: "at brace", "62 % drawn", "full draw". `fraction` is 0 at brace, 1 at full draw. */
export function drawText(fraction: number): string {
  if (fraction <= 0) return pose.brace
  if (fraction >= 1) return pose.full
  return pose.drawn(`${fixed(fraction * 100, 0)}\u00a0%`)
}

/** "12° up", "12° down" or "level"; positive raises the front. */
export const slopeText = (degrees: number): string => sided(degrees, pose.up, pose.down, pose.level)

/** "5° right", "5° left" or "upright": where the top of the bow leans, positive to the archer's right. */
export const cantText = (degrees: number): string => sided(degrees, pose.right, pose.left, pose.upright)

type Side = (angle: string) => string

function sided(degrees: number, positive: Side, negative: Side, none: string): string {
  const size = localNumber(String(Number(Math.abs(degrees).toFixed(1))))
  if (size === "0") return none
  return (degrees > 0 ? positive : negative)(`${size}°`)
}
