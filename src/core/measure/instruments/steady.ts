import { add, dot, scale, unit, type Vec3 } from "../../solids"

/** A direction at a time, ms of any one clock. */
export interface Moment {
  readonly at: number
  readonly down: Vec3
}

/** The last readings of a direction, and whether they have come to rest. */
export interface Steadiness {
  readonly recent: readonly Moment[]
  /** Mean direction, unit vector; null without readings. */
  readonly mean: Vec3 | null
  /** Furthest of the recent readings from it, rad. */
  readonly spread: number
  readonly steady: boolean
}

export const UNSTEADY: Steadiness = { recent: [], mean: null, spread: Number.POSITIVE_INFINITY, steady: false }

/** A bow on a cord swings in a second or so; over two of them its mean is where it hangs. */
export const STEADY_MS = 2000
/** What a phone's sensor wanders by itself, rad: 0.3° (common practice, no source). */
export const STEADY_WITHIN = 0.0052
/** Fewer readings than this say nothing, however long they took: a sensor at 5 a second still does. */
const ENOUGH = 8
/** A gap longer than this begins anew, ms: the page was asleep, and the bow may hang elsewhere. */
const LONGEST_GAP = 1000

/**
 * Takes one more reading. Steady is a bow whose last two seconds all lie within STEADY_WITHIN of their mean. A reading
 * out of its order is passed over, so is one that is no direction.
 */
export function steadier(before: Steadiness, moment: Moment): Steadiness {
  const last = before.recent.at(-1)
  if (!moment.down.every(Number.isFinite) || dot(moment.down, moment.down) === 0) return before
  if (last !== undefined && moment.at <= last.at) return before
  const kept = last !== undefined && moment.at - last.at > LONGEST_GAP ? [] : before.recent
  const recent = [...kept.filter(({ at }) => moment.at - at <= STEADY_MS), { at: moment.at, down: unit(moment.down) }]
  const sum = recent.reduce<Vec3>((total, { down }) => add(total, down), [0, 0, 0])
  if (dot(sum, sum) === 0) return { ...UNSTEADY, recent }
  const mean = unit(sum)
  const spread = Math.max(...recent.map(({ down }) => angleBetween(down, mean)))
  const long = moment.at - (kept[0]?.at ?? moment.at) >= STEADY_MS
  return { recent, mean, spread, steady: long && recent.length >= ENOUGH && spread <= STEADY_WITHIN }
}

/** By the chord, which keeps its digits for small angles. */
const angleBetween = (a: Vec3, b: Vec3): number => {
  const d = add(a, scale(b, -1))
  return 2 * Math.asin(Math.min(1, Math.sqrt(dot(d, d)) / 2))
}
