import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import { mountDirection } from "../../core/rig"
import { MM } from "../../scene/assemble"
import { mountNames } from "../../scene/mountNames"
import type { Bow, Scene } from "../../scene/schema"
import { type Knot, smoothThrough } from "./smoothThrough"

/** One cut across the riser at a height: its edges in bow axes, m. */
export interface Section {
  readonly y: number
  readonly back: number
  readonly front: number
  readonly left: number
  readonly right: number
}

/** Where the riser ends and the limbs begin, bow axes, m. */
export interface RiserEnds {
  readonly forward: number
  readonly lower: number
  readonly upper: number
}

/** A compound's file says where its limbs' centres are, not where they are fixed: this far out, as drawn. */
const COMPOUND_POCKET = 0.74

export function riserEnds(bow: Bow): RiserEnds {
  const middle = bow.centreLineMm * MM
  if (bow.kind === "recurve") {
    const [forward, out] = [bow.limbs.rootMm[0] * MM, bow.limbs.rootMm[1] * MM]
    return { forward, lower: middle - out, upper: middle + out }
  }
  const out = COMPOUND_POCKET * bow.limbs.centreMm[1] * MM
  return { forward: bow.limbs.centreMm[0] * MM + 0.03, lower: middle - out, upper: middle + out }
}

/** Sections drawn; enough that the sight window's ends look rounded. */
const SECTIONS = 72
/** Thinnest a riser is drawn, m. */
const THINNEST = 0.014
/** A mount further than this from the plain outline is drawn standing off on a post instead of bending it, m. */
export const BENDABLE = 0.03
/** Knots nearer than this to a mount's give way to it, m. */
const CROWDED = 0.022

/**
 * The riser's outline from the lower limb pocket to the upper, for the picture only: the file gives a riser's mass,
 * not its shape. It passes through what the file does place: limb roots, grip pivot, and the mounts near it. The
 * sight window is cut on the left for a right-handed archer (common practice, no source), and on the right for a left-handed one.
 */
export function riserSections(scene: Scene): Section[] {
  const ends = riserEnds(scene.bow)
  const { front, back } = edges(scene, ends)
  const span = ends.upper - ends.lower
  const half = smoothThrough([
    { at: ends.lower, value: 0.021 },
    { at: ends.lower + 0.12 * span, value: 0.019 },
    { at: ends.lower + 0.3 * span, value: 0.0115 },
    { at: ends.lower + 0.5 * span, value: 0.013 },
    { at: ends.lower + 0.75 * span, value: 0.0115 },
    { at: ends.lower + 0.88 * span, value: 0.019 },
    { at: ends.upper, value: 0.021 },
  ])
  const cut = windowCut(ends.upper)
  const side = scene.bow.hand === "right" ? 1 : -1
  return Array.from({ length: SECTIONS + 1 }, (_, index) => {
    const y = ends.lower + (span * index) / SECTIONS
    const [w, c] = [half(y), cut(y)]
    const [from, to] = [-w * (1 - c) + 0.004 * c, w + 0.006 * c]
    const b = back(y)
    const f = Math.max(front(y), b + THINNEST)
    return { y, back: b, front: f, left: side > 0 ? from : -to, right: side > 0 ? to : -from }
  })
}

/** How deep the sight window is cut at a height: 0 not, 1 past the centre. */
function windowCut(upper: number): (y: number) => number {
  const top = Math.min(0.19, 0.62 * upper)
  if (top < 0.07) return () => 0
  return smoothThrough([
    { at: 0.024, value: 0 },
    { at: 0.036, value: 1 },
    { at: top - 0.03, value: 1 },
    { at: top, value: 0 },
  ])
}

function edges(scene: Scene, { forward, lower, upper }: RiserEnds) {
  const front: Knot[] = [
    { at: lower, value: forward },
    { at: 0.78 * lower, value: forward + 0.016 },
    { at: 0.48 * lower, value: 0.036 },
    { at: -0.07, value: 0.042 },
    { at: -0.01, value: 0.034 },
    { at: 0.05, value: 0.048 },
    { at: 0.5 * upper, value: 0.05 },
    { at: 0.78 * upper, value: forward + 0.018 },
    { at: upper, value: forward },
  ]
  const back: Knot[] = [
    { at: lower, value: forward - 0.024 },
    { at: 0.8 * lower, value: forward - 0.018 },
    { at: 0.5 * lower, value: -0.004 },
    { at: -0.05, value: 0.006 },
    { at: 0.0, value: 0.008 },
    { at: 0.04, value: 0.002 },
    { at: 0.5 * upper, value: 0.014 },
    { at: 0.8 * upper, value: forward - 0.016 },
    { at: upper, value: forward - 0.024 },
  ]
  const plain = { front: smoothThrough(ascending(front)), back: smoothThrough(ascending(back)) }
  const pulls: { front: Knot[]; back: Knot[] } = { front: [], back: [] }
  for (const name of mountNames) {
    const mount = scene.mounts[name]
    if (mount === undefined) continue
    const [x, y] = [mount.atMm[0] * MM, mount.atMm[1] * MM]
    if (y < lower + 0.02 || y > upper - 0.02) continue
    const edge = mountDirection(mount.pitchDeg * DEGREE, mount.yawDeg * DEGREE)[0] >= 0 ? "front" : "back"
    if (Math.abs(x - plain[edge](y)) < BENDABLE) pulls[edge].push({ at: y, value: x })
  }
  return { front: smoothThrough(merged(front, pulls.front)), back: smoothThrough(merged(back, pulls.back)) }
}

/** Knots in order, without those that a mount's own knot crowds out; the two ends stay. */
function merged(knots: readonly Knot[], pulls: readonly Knot[]): Knot[] {
  const kept = knots.filter((knot, index) => {
    const end = index === 0 || index === knots.length - 1
    return end || pulls.every((pull) => Math.abs(pull.at - knot.at) > CROWDED)
  })
  return ascending([...kept, ...pulls])
}

/** Sorted, and where two stand at one height (a very short riser), only the first. */
function ascending(knots: readonly Knot[]): Knot[] {
  const sorted = [...knots].sort((a, b) => a.at - b.at)
  return sorted.filter((knot, index) => index === 0 || knot.at - sorted[index - 1]!.at > 1e-6)
}

/** The grip piece, its deepest place at the pivot: the origin. */
export function gripSections(): Section[] {
  const back = smoothThrough([
    { at: -0.1, value: -0.008 },
    { at: -0.06, value: -0.009 },
    { at: -0.02, value: -0.002 },
    { at: 0, value: 0 },
    { at: 0.014, value: -0.002 },
    { at: 0.026, value: -0.009 },
  ])
  const half = smoothThrough([
    { at: -0.1, value: 0.0135 },
    { at: -0.055, value: 0.0175 },
    { at: 0, value: 0.0135 },
    { at: 0.026, value: 0.0125 },
  ])
  const count = 24
  return Array.from({ length: count + 1 }, (_, index) => {
    const y = -0.1 + (0.126 * index) / count
    return { y, back: back(y), front: 0.028, left: -half(y), right: half(y) }
  })
}
