/** A setup that meets every limit, by its place in the order of plain enumeration, with its keys. */
export interface Found {
  readonly first: number
  readonly second: number
  readonly order: number
  /** Of setups with the same group only the best is listed; without one a setup stands for itself. */
  readonly group?: string
}

/** Below 0 when `a` is the better one. Two setups are never equal: the earlier in the order wins. */
export const betterFound = (a: Found, b: Found): number => a.first - b.first || a.second - b.second || a.order - b.order

/** The best few so far, best first. */
export class Best {
  readonly list: Found[] = []
  /** What a setup has to beat, as three numbers for quick reading: none while there is room. */
  first = Number.POSITIVE_INFINITY
  second = Number.POSITIVE_INFINITY
  order = Number.POSITIVE_INFINITY

  constructor(readonly count: number) {}

  /** Whether something no better than these keys cannot come among the best. */
  beats(first: number, second: number, order: number): boolean {
    if (first !== this.first) return first > this.first
    if (second !== this.second) return second > this.second
    return order >= this.order
  }

  /**
   * Puts a setup in its place if it has one among the best; one that is there already stays once, and so does the best
   * of a group.
   */
  offer(found: Found): void {
    if (this.beats(found.first, found.second, found.order)) return
    if (found.group !== undefined) {
      const known = this.list.findIndex(({ group }) => group === found.group)
      if (known >= 0 && betterFound(this.list[known]!, found) <= 0) return
      if (known >= 0) this.list.splice(known, 1)
    }
    let low = 0
    let high = this.list.length
    while (low < high) {
      const middle = (low + high) >> 1
      if (betterFound(this.list[middle]!, found) < 0) low = middle + 1
      else high = middle
    }
    if (this.list[low]?.order === found.order) return
    this.list.splice(low, 0, found)
    if (this.list.length > this.count) this.list.pop()
    if (this.list.length === this.count) this.demand(this.list[this.count - 1]!)
  }

  /** Takes up what others have found: nothing that does not beat `last` is wanted any more. */
  demand(last: Found): void {
    if (this.beats(last.first, last.second, last.order)) return
    this.first = last.first
    this.second = last.second
    this.order = last.order
  }
}
