/** What the picture of all answers needs of one. */
export interface Weighed {
  readonly massG: number
  /** Turn resistance, kg·m². */
  readonly resistance: number
}

/**
 * The setups of which none other listed is both no heavier and no easier to turn, from the lightest up: their places in
 * the list. Of equals the first counts.
 */
export function frontOf(setups: readonly Weighed[]): number[] {
  const order = setups.map((_, index) => index)
  order.sort((a, b) => setups[a]!.massG - setups[b]!.massG || setups[b]!.resistance - setups[a]!.resistance || a - b)
  const front: number[] = []
  let most = Number.NEGATIVE_INFINITY
  for (const index of order) {
    if (setups[index]!.resistance <= most) continue
    most = setups[index]!.resistance
    front.push(index)
  }
  return front
}

export interface Scale {
  readonly from: number
  readonly to: number
  /** Where marks stand. */
  readonly marks: readonly number[]
}

/** A scale with about `count` round marks that holds all values, and is not a point where they are all equal. */
export function scaleOf(values: readonly number[], count: number, least: number): Scale {
  const low = Math.min(...values)
  const high = Math.max(...values)
  const spare = Math.max((high - low) * 0.06, least)
  const [from, to] = [low - spare, high + spare]
  const rough = (to - from) / count
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = power * ([1, 2, 5, 10].find((each) => each * power >= rough) ?? 10)
  const first = Math.ceil(from / step)
  const marks = Array.from({ length: Math.max(0, Math.floor(to / step) - first + 1) }, (_, at) => (first + at) * step)
  return { from, to, marks }
}
