import { hillRise, TERRACE } from "../picture/hill"
import type { FlatPoint } from "./frames"

/** The hillside under the side drawing. */
export interface FlatHill {
  readonly slopeDeg: number
  /** Height of the place where the archer stands, m from the grip. */
  readonly ground: number
  /** Ends of what is drawn of it, and where its target stands, m ahead of the grip. */
  readonly from: number
  readonly to: number
  readonly target: number
}

/** How far below the lowest part the ground lies, m. */
const CLEAR = 0.035
/** The slope goes on this far from the level place, and beyond the target on it, m. */
const SLOPE = { behind: 0.16, ahead: 0.26, beyond: 0.1 }
/** The target as drawn, m: near and small, so that the bow stays large. */
export const BUTT = { half: 0.1, above: 0.15, thick: 0.045 }
/** The slope's line is sampled this densely, m. */
const SAMPLE = 0.04

/** The hillside that a bow drawn by these points is held on; none on the level. */
export function hillUnder(points: readonly FlatPoint[], slopeDeg: number): FlatHill | null {
  if (slopeDeg === 0) return null
  const lowest = Math.min(...points.map(([across, up]) => up - hillRise(across, slopeDeg)))
  const target = TERRACE + SLOPE.ahead
  return {
    slopeDeg,
    ground: lowest - CLEAR,
    from: -TERRACE - SLOPE.behind,
    to: target + SLOPE.beyond,
    target,
  }
}

export const onHill = ({ ground, slopeDeg }: FlatHill, forward: number, above = 0): FlatPoint => [
  forward,
  ground + hillRise(forward, slopeDeg) + above,
]

/** Points that keep other things off the hillside and its target. */
export function hillPoints(hill: FlatHill): FlatPoint[] {
  const steps = Math.ceil((hill.to - hill.from) / SAMPLE)
  const line = Array.from({ length: steps + 1 }, (_, index) =>
    onHill(hill, hill.from + ((hill.to - hill.from) * index) / steps),
  )
  return [...line, onHill(hill, hill.target, BUTT.above + BUTT.half)]
}
