import { drawnBalance } from "../../core/balance"
import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import { MM } from "../assemble"
import { type Result, success } from "../errors"
import { unsolvable } from "../limbErrors"
import { type LimbPlace, placeLimbs } from "../limbPlace"
import type { Scene } from "../schema"
import { fixedNoseDown, type Hillside, hangingNoseDown, hillside, restingStem, splitRig } from "./moments"

/** Net lift at full draw against slope, N·m, in the order of the comparison's slopes. */
export interface SlopeCurve {
  readonly netLift: readonly number[]
  /** Largest less smallest net lift at whole degrees from -30 to 30, N·m: 0 is a bow that holds alike on every slope. */
  readonly flatness: number
}

export interface SlopeComparison {
  /** From steepest down to steepest up, degrees, positive front up. */
  readonly slopesDeg: readonly number[]
  /** The rig as it is, its swing weights hanging. */
  readonly free: SlopeCurve
  /** The same with every swing weight locked where it rests on the level. */
  readonly locked: SlopeCurve
  /** The same with no swing weight at all. */
  readonly without: SlopeCurve
  /** Nose-up moment of the line of pull, N·m; the same on every slope. */
  readonly lift: number
  readonly hasSwing: boolean
}

/** The steepest slope compared, degrees: beyond it no field course shoots (common practice, no source). */
export const STEEPEST_DEG = 45
/** The slopes that flatness looks at, degrees: where most field shots lie (common practice, no source). */
export const FLATNESS_DEG = 30

const wholeDegrees: readonly Hillside[] = Array.from({ length: 2 * STEEPEST_DEG + 1 }, (_, index) =>
  hillside(index - STEEPEST_DEG),
)
/** Slopes of the flatness, steepest down first. */
export const flatnessSlopes: readonly Hillside[] = wholeDegrees.filter(
  ({ slopeDeg }) => Math.abs(slopeDeg) <= FLATNESS_DEG,
)

/**
 * Compares a rig at full draw on slopes every `stepDeg` (1 or 5 degrees), uncanted, with its swing weights free,
 * locked and gone. Fails only where the limbs cannot take their full draw.
 */
export function slopeComparison(scene: Scene, stepDeg: 1 | 5 = 1): Result<SlopeComparison> {
  const place = placeLimbs(scene.bow, 1)
  return place.ok ? success(compareSlopes(scene, place.value, stepDeg)) : unsolvable(place)
}

/**
 * The same with the limbs at full draw already known (`evaluation.fullDraw.limbs`), for every step of a drag. The
 * masses are summed once; on each slope only their first moment is turned, so that all curves together take far less
 * than one assembly of the scene a slope.
 */
export function compareSlopes(scene: Scene, drawn: LimbPlace, stepDeg: 1 | 5 = 1): SlopeComparison {
  const { fixed, swings, mass } = splitRig(scene, drawn)
  const lift = liftOf(scene, drawn, mass)
  const level = hillside(0)
  const stems = swings.map(({ swing }) => restingStem(swing, level))
  const without = wholeDegrees.map((slope) => lift - fixedNoseDown(fixed, slope))
  const less = (noseDown: (slope: Hillside) => number) =>
    wholeDegrees.map((slope, index) => without[index]! - noseDown(slope))
  const free = less((slope) => {
    let sum = 0
    for (const each of swings) sum += hangingNoseDown(each, restingStem(each.swing, slope), slope)
    return sum
  })
  const locked = less((slope) => {
    let sum = 0
    for (let index = 0; index < swings.length; index++) sum += hangingNoseDown(swings[index]!, stems[index]!, slope)
    return sum
  })
  const shown = <T>(values: readonly T[]) => values.filter((_, index) => index % stepDeg === 0)
  const curve = (netLift: readonly number[]): SlopeCurve => ({ netLift: shown(netLift), flatness: flatnessOf(netLift) })
  return {
    slopesDeg: shown(wholeDegrees).map(({ slopeDeg }) => slopeDeg),
    free: curve(free),
    locked: curve(locked),
    without: curve(without),
    lift,
    hasSwing: swings.length > 0,
  }
}

/** Nose-up moment of the line of pull at full draw, N·m. */
export function liftOf({ bow, archer }: Scene, drawn: LimbPlace, mass: number): number {
  return drawnBalance({
    holdForce: drawn.holdForce,
    nockHeight: bow.nockHeightMm * MM,
    drawLength: bow.drawLengthMm * MM,
    elbowElevation: archer.elbowElevationDeg * DEGREE,
    mass,
    noseDown: 0,
  }).lift
}

/** Spread of one value a whole degree from -45 to 45, over the slopes of the flatness. */
function flatnessOf(values: readonly number[]): number {
  let least = Number.POSITIVE_INFINITY
  let most = Number.NEGATIVE_INFINITY
  for (let index = STEEPEST_DEG - FLATNESS_DEG; index <= STEEPEST_DEG + FLATNESS_DEG; index++) {
    const value = values[index]!
    if (value < least) least = value
    if (value > most) most = value
  }
  return most - least
}
