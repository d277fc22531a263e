import { GRAVITY } from "../../core/constants"
import { dot, type Vec3 } from "../../core/solids"
import { pendulumOf, swingRest } from "../../core/swing"
import { rig, swingWeight } from "../assemble"
import { pathText } from "../errors"
import type { LimbPlace } from "../limbPlace"
import type { PartOf, Scene } from "../schema"
import { flatnessSlopes, liftOf } from "./compare"
import { fixedNoseDown, hangingNoseDown, hillside, restingStem, splitRig } from "./moments"
import { type HangPlace, withSwingAt } from "./place"

/** One try of the search, as little of it as ranking needs. */
export interface Candidate {
  readonly place: number
  readonly stemLengthMm: number
  readonly bobMassG: number
  /** N·m. */
  readonly flatness: number
  /** The whole bow at full draw, g. */
  readonly massG: number
  /** Its turn in the search: places, then stems, then bobs. */
  readonly order: number
}

/** Differences in flatness below this, N·m, are none: far less than a hand can feel, far more than rounding. */
export const SAME_FLATNESS = 1e-9
/** The same for the mass, g. */
export const SAME_MASS = 1e-6

/**
 * Which of two is better, as a sorting function: the flatter; of equally flat ones the lighter, then the one with the
 * shorter stem, then the one met first. Flatness and mass are compared in whole grains of `SAME_…`, so that the order
 * is a total one.
 */
export function betterHang(a: Candidate, b: Candidate): number {
  return (
    Math.round(a.flatness / SAME_FLATNESS) - Math.round(b.flatness / SAME_FLATNESS) ||
    Math.round(a.massG / SAME_MASS) - Math.round(b.massG / SAME_MASS) ||
    a.stemLengthMm - b.stemLengthMm ||
    a.order - b.order
  )
}

/** Weighs one kind of swing weight at one place: what it does to the flatness of the bow. */
export type Weigher = (swing: PartOf<"swing">) => { readonly flatness: number; readonly massG: number }

/**
 * Makes the weighers of a search. A rest on a slope depends on joint and stop alone, which a search keeps, so each try
 * is one multiply-add a slope: net lift = (bow's) - g (M (R h).x + M l (R d).x), h the joint, d the resting stem.
 */
export function weigherOf(base: Scene, drawn: LimbPlace, template: PartOf<"swing">): (place: HangPlace) => Weigher {
  const split = splitRig(base, drawn)
  const lift = liftOf(base, drawn, split.mass)
  const { joint, stop } = swingWeight(template)
  const bow = Float64Array.from(flatnessSlopes, (slope) => {
    const swinging = split.swings.reduce(
      (sum, each) => sum + hangingNoseDown(each, restingStem(each.swing, slope), slope),
      0,
    )
    return lift - fixedNoseDown(split.fixed, slope) - swinging
  })
  const stem = Float64Array.from(
    flatnessSlopes,
    ({ rotation, gravity }) => GRAVITY * dot(rotation[0], swingRest(gravity, joint, stop).direction),
  )
  return (place) => {
    const joints = jointsOf(base, place, template)
    const joint = Float64Array.from(flatnessSlopes, ({ rotation }) =>
      joints.reduce((sum, hinge) => sum + GRAVITY * dot(rotation[0], hinge), 0),
    )
    return (swing) => {
      const { mass, arm } = pendulumOf(swingWeight(swing))
      const along = mass * arm * joints.length
      let least = Number.POSITIVE_INFINITY
      let most = Number.NEGATIVE_INFINITY
      for (let index = 0; index < bow.length; index++) {
        const net = bow[index]! - mass * joint[index]! - along * stem[index]!
        if (net < least) least = net
        if (net > most) most = net
      }
      return { flatness: most - least, massG: (split.mass + mass * joints.length) * 1e3 }
    }
  }
}

/** Where the joints of a weight hung at a place are, m, bow axes. */
function jointsOf(base: Scene, place: HangPlace, template: PartOf<"swing">): Vec3[] {
  const hung = withSwingAt(base, place, template)
  const known = new Set(rig(base, hillside(0).gravity).map(({ address }) => pathText(address)))
  return rig(hung, hillside(0).gravity).flatMap((part) =>
    part.hung !== undefined && !known.has(pathText(part.address)) ? [part.hung.hinge] : [],
  )
}
