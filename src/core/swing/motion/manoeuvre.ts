/** How steeply the bow is raised, rad, with its first and second rate, rad/s and rad/s². Positive: front up. */
export interface SlopeNow {
  slope: number
  rate: number
  acceleration: number
}

/** Raising or lowering of the bow about its grip as a pure function of time, s. */
export interface Manoeuvre {
  /** When the bow comes to rest, s. */
  readonly end: number
  /**
   * Times at which the third derivative jumps, s, ascending. A step of the integrator across one would lose its order,
   * so steps end there.
   */
  readonly joins: readonly number[]
  /** Writes the slope and its rates at `time` into `now`, so that a frame loop allocates nothing. */
  readonly at: (time: number, now: SlopeNow) => void
}

/** Largest rate of 10u³ - 15u⁴ + 6u⁵ over u = 0 … 1, met at the middle: 30/16. */
const PEAK = 1.875

/** The bow held still at `slope`, rad. */
export const holdStill = (slope: number): Manoeuvre => glide({ slope, rate: 0, acceleration: 0 }, 0, slope, 0)

/**
 * From rest at slope `from` to rest at `to`, rad, never faster than `rate`, rad/s, beginning at time 0. The slope
 * follows 10u³ - 15u⁴ + 6u⁵: rate and acceleration are continuous and zero at both ends, so the hand gives no jerk
 * that a pendulum would ring from.
 * @throws RangeError unless the slopes are finite and the rate is positive.
 */
export function raise(from: number, to: number, rate: number): Manoeuvre {
  return glide({ slope: from, rate: 0, acceleration: 0 }, 0, to, lasting(from, to, rate))
}

/**
 * A new aim taken while the bow may still be moving: goes on from what `manoeuvre` does at `time`, with the same
 * slope, rate and acceleration, to rest at `to`, rad. Begun from rest it keeps to `rate`, rad/s; begun in motion it
 * takes as long as from rest and may overshoot, as an arm does. Before `time` it is `manoeuvre` itself.
 */
export function raiseOn(manoeuvre: Manoeuvre, time: number, to: number, rate: number): Manoeuvre {
  const now = { slope: 0, rate: 0, acceleration: 0 }
  manoeuvre.at(time, now)
  const stillMoving = Math.max(0, manoeuvre.end - time)
  const then = glide(now, time, to, Math.max(stillMoving, lasting(now.slope, to, rate)))
  const joins = [...manoeuvre.joins.filter((join) => join < time), time, then.end]
  return { end: then.end, joins, at: (when, into) => (when < time ? manoeuvre : then).at(when, into) }
}

function lasting(from: number, to: number, rate: number): number {
  if (!Number.isFinite(from) || !Number.isFinite(to)) throw new RangeError("a slope must be a finite angle")
  if (!(rate > 0) || !Number.isFinite(rate)) throw new RangeError("the rate of raising must be positive and finite")
  return (PEAK * Math.abs(to - from)) / rate
}

/**
 * The fifth-degree polynomial in time that starts with `first` and rests at `to` after `duration`: with u = elapsed /
 * duration and the six end conditions, slope = c0 + c1 u + … + c5 u⁵.
 */
function glide(first: SlopeNow, start: number, to: number, duration: number): Manoeuvre {
  const c0 = first.slope
  const c1 = first.rate * duration
  const c2 = (first.acceleration * duration * duration) / 2
  const gap = to - c0 - c1 - c2
  const rateGap = -c1 - 2 * c2
  const accelerationGap = -2 * c2
  const c3 = 10 * gap - 4 * rateGap + accelerationGap / 2
  const c4 = -15 * gap + 7 * rateGap - accelerationGap
  const c5 = 6 * gap - 3 * rateGap + accelerationGap / 2
  const end = start + duration
  const at = (time: number, now: SlopeNow) => {
    if (time >= end) {
      now.slope = to
      now.rate = 0
      now.acceleration = 0
      return
    }
    const u = Math.max(0, time - start) / duration
    now.slope = c0 + u * (c1 + u * (c2 + u * (c3 + u * (c4 + u * c5))))
    now.rate = (c1 + u * (2 * c2 + u * (3 * c3 + u * (4 * c4 + u * 5 * c5)))) / duration
    now.acceleration = (2 * c2 + u * (6 * c3 + u * (12 * c4 + u * 20 * c5))) / (duration * duration)
  }
  return { end, joins: [start, end], at }
}
