/** The range to reach, and where a knob starts from: outside it. */
export interface Goal {
  readonly min: number
  readonly max: number
}

/** Of a value to a goal: -1 below, 1 above, 0 inside. */
export const sideOf = (value: number, { min, max }: Goal): -1 | 0 | 1 => (value < min ? -1 : value > max ? 1 : 0)

/** Interpolated guesses before the bracket is simply halved: a curved figure can hold the interpolation at one end. */
const INTERPOLATIONS = 4

/**
 * The fewest whole steps (1 … `limit`) that bring `figure` from outside the goal to inside it, or null where the
 * limit is reached first or one step leaps over the goal. `figure(0)` is the present value and `rate` its change per
 * step there: the first guess, from which a bracket is grown and closed by interpolation on real values of the
 * figure. For a figure that turns round on the way it is the first crossing inside the bracket that was found.
 */
export function fewestSteps(figure: (steps: number) => number, rate: number, limit: number, goal: Goal): number | null {
  const start = figure(0)
  const from = sideOf(start, goal)
  if (from === 0 || limit < 1) return null
  const edge = from > 0 ? goal.max : goal.min
  const ahead = (value: number) => {
    const steps = Math.ceil((edge - value) / rate)
    return steps >= 1 ? steps : limit
  }
  let low = 0
  let high = Math.min(limit, ahead(start))
  let lowValue = start
  let highValue = figure(high)
  while (sideOf(highValue, goal) === from) {
    if (high >= limit) return null
    const step = ahead(highValue)
    low = high
    lowValue = highValue
    high = Math.min(limit, high + step)
    highValue = figure(high)
  }
  for (let tries = 0; high - low > 1; tries++) {
    const share = tries < INTERPOLATIONS ? (edge - lowValue) / (highValue - lowValue) : 1 / 2
    const middle = Math.min(high - 1, Math.max(low + 1, Math.ceil(low + share * (high - low))))
    const value = figure(middle)
    if (sideOf(value, goal) === from) [low, lowValue] = [middle, value]
    else [high, highValue] = [middle, value]
  }
  return sideOf(highValue, goal) === 0 ? high : null
}
