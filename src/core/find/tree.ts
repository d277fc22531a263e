import { type Coordinates, coordinatesOfOptions } from "./coordinates"
import { halve } from "./halve"
import type { Options } from "./problem"
import { REACHES } from "./quantities"

/** Room for this many nodes at first: most trees are hardly looked into. */
const FIRST_ROOM = 64

/**
 * The options of a branch in nested halves, alike ones together: a node stands for all options below it and holds
 * their least and greatest coordinates, least reaches and least uses. Node 0 is the whole branch; a node's halves are
 * made when they are first asked for, and are the same whenever that is.
 */
export class Tree {
  /** Rows of as many numbers as there are coordinates. */
  low: Float64Array
  high: Float64Array
  /** Rows of REACHES. */
  reach: Float64Array
  /** Rows of as many numbers as there are kinds that may run out. */
  uses: Uint8Array
  /** The earliest option below a node; of a single option, that option. */
  earliest: Int32Array
  size: Int32Array
  /** How unlike the options below are, in worth of coordinates; 0 for a single one. */
  width: Float64Array

  private readonly values: Float64Array
  private readonly order: Int32Array
  private readonly key: Float64Array
  private readonly dims: number
  private from = new Int32Array(FIRST_ROOM)
  /** The first of a node's two halves, the other one follows it; 0 where there are none yet. */
  private halves = new Int32Array(FIRST_ROOM)
  private widest = new Int32Array(FIRST_ROOM)
  private made = 0

  /** `options` must not be empty. `scarce` lists the kinds whose use is followed, of `kinds` in all. */
  constructor(
    private readonly options: Options,
    private readonly coordinates: Coordinates,
    private readonly scarce: readonly number[],
    private readonly kinds: number,
  ) {
    this.dims = coordinates.count
    this.values = coordinatesOfOptions(coordinates, options.sums, options.count)
    this.order = Int32Array.from({ length: options.count }, (_, option) => option)
    this.key = new Float64Array(options.count)
    this.low = new Float64Array(FIRST_ROOM * this.dims)
    this.high = new Float64Array(FIRST_ROOM * this.dims)
    this.reach = new Float64Array(FIRST_ROOM * REACHES)
    this.uses = new Uint8Array(FIRST_ROOM * scarce.length)
    this.earliest = new Int32Array(FIRST_ROOM)
    this.size = new Int32Array(FIRST_ROOM)
    this.width = new Float64Array(FIRST_ROOM)
    this.add(0, options.count)
  }

  /** The first of the two halves of a node with more than one option; the other one is the next. */
  half(node: number): number {
    const known = this.halves[node]!
    if (known > 0) return known
    const { values, order, key, dims } = this
    const from = this.from[node]!
    const to = from + this.size[node]!
    const along = this.widest[node]!
    for (let place = from; place < to; place++) key[order[place]!] = values[order[place]! * dims + along]!
    const middle = (from + to) >> 1
    halve(order, key, from, to - 1, middle)
    const half = this.add(from, middle)
    this.add(middle, to)
    this.halves[node] = half
    return half
  }

  /** A new node for the options at these places of the order. */
  private add(from: number, to: number): number {
    const node = this.made++
    if (node >= this.size.length) this.makeRoom()
    this.from[node] = from
    this.size[node] = to - from
    this.takeLeast(node, from, to)
    this.measure(node, from, to)
    return node
  }

  /** Notes the range of every coordinate, and in which one the options differ most. */
  private measure(node: number, from: number, to: number): void {
    const { values, order, dims } = this
    let most = 0
    for (let dim = 0; dim < dims; dim++) {
      let low = Number.POSITIVE_INFINITY
      let high = Number.NEGATIVE_INFINITY
      for (let place = from; place < to; place++) {
        const value = values[order[place]! * dims + dim]!
        if (value < low) low = value
        if (value > high) high = value
      }
      this.low[node * dims + dim] = low
      this.high[node * dims + dim] = high
      const width = (high - low) * this.coordinates.worth[dim]!
      if (width <= most) continue
      most = width
      this.widest[node] = dim
    }
    // Alike in every coordinate is still not one option: such nodes are halved last, but they are halved.
    this.width[node] = to - from === 1 ? 0 : Math.max(most, Number.MIN_VALUE)
  }

  private takeLeast(node: number, from: number, to: number): void {
    const { order, options, scarce, kinds } = this
    let earliest = options.count
    for (let place = from; place < to; place++) earliest = Math.min(earliest, order[place]!)
    this.earliest[node] = earliest
    for (let way = 0; way < REACHES; way++) {
      let least = Number.POSITIVE_INFINITY
      for (let place = from; place < to; place++) {
        least = Math.min(least, options.reaches[order[place]! * REACHES + way]!)
      }
      this.reach[node * REACHES + way] = least
    }
    for (let index = 0; index < scarce.length; index++) {
      let least = 255
      for (let place = from; place < to; place++) {
        least = Math.min(least, options.uses[order[place]! * kinds + scarce[index]!]!)
      }
      this.uses[node * scarce.length + index] = least
    }
  }

  private makeRoom(): void {
    const grown = <T extends Float64Array | Int32Array | Uint8Array>(array: T): T => {
      const larger = new (array.constructor as new (length: number) => T)(array.length * 2)
      larger.set(array)
      return larger
    }
    this.low = grown(this.low)
    this.high = grown(this.high)
    this.reach = grown(this.reach)
    this.uses = grown(this.uses)
    this.earliest = grown(this.earliest)
    this.size = grown(this.size)
    this.width = grown(this.width)
    this.from = grown(this.from)
    this.halves = grown(this.halves)
    this.widest = grown(this.widest)
  }
}
