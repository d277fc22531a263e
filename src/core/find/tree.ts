import { type Coordinates, coordinatesOfOptions } from "./coordinates"
import type { Options } from "./problem"
import { REACHES } from "./quantities"

/**
 * The options of a branch in nested halves, alike ones together: a node stands for all options below it and holds
 * their least and greatest coordinates, least reaches and least uses. Node 0 is the whole branch.
 */
export interface Tree {
  readonly nodes: number
  /** Rows of as many numbers as there are coordinates. */
  readonly low: Float64Array
  readonly high: Float64Array
  /** Rows of REACHES. */
  readonly reach: Float64Array
  /** Rows of as many numbers as there are kinds that may run out. */
  readonly uses: Uint8Array
  /** The first of a node's two halves, the other one follows it; 0 for a single option. */
  readonly half: Int32Array
  /** The earliest option below a node; of a single option, that option. */
  readonly earliest: Int32Array
  readonly size: Int32Array
  /** How unlike the options below are, in worth of coordinates; 0 for a single one. */
  readonly width: Float64Array
}

/** Builds a branch's tree. `scarce` lists the kinds whose use is followed, of `kinds` in all. */
export function treeOf(options: Options, coordinates: Coordinates, scarce: readonly number[], kinds: number): Tree {
  const { count } = options
  const dims = coordinates.count
  const values = coordinatesOfOptions(coordinates, options.sums, count)
  const nodes = Math.max(0, 2 * count - 1)
  const tree: Tree = {
    nodes,
    low: new Float64Array(nodes * dims).fill(Number.POSITIVE_INFINITY),
    high: new Float64Array(nodes * dims).fill(Number.NEGATIVE_INFINITY),
    reach: new Float64Array(nodes * REACHES).fill(Number.POSITIVE_INFINITY),
    uses: new Uint8Array(nodes * scarce.length).fill(255),
    half: new Int32Array(nodes),
    earliest: new Int32Array(nodes).fill(count),
    size: new Int32Array(nodes),
    width: new Float64Array(nodes),
  }
  const order = Int32Array.from({ length: count }, (_, option) => option)
  const key = new Float64Array(count)
  let next = 1
  const pending: [node: number, from: number, to: number][] = count > 0 ? [[0, 0, count]] : []
  for (let entry = pending.pop(); entry !== undefined; entry = pending.pop()) {
    const [node, from, to] = entry
    tree.size[node] = to - from
    for (let place = from; place < to; place++) include(node, order[place]!)
    const along = widest(node)
    if (to - from === 1) {
      tree.width[node] = 0
      continue
    }
    for (let place = from; place < to; place++) key[order[place]!] = values[order[place]! * dims + along]!
    const middle = (from + to) >> 1
    halve(order, key, from, to - 1, middle)
    tree.half[node] = next
    pending.push([next, from, middle], [next + 1, middle, to])
    next += 2
  }
  return tree

  function include(node: number, option: number) {
    for (let dim = 0; dim < dims; dim++) {
      const value = values[option * dims + dim]!
      const at = node * dims + dim
      if (value < tree.low[at]!) tree.low[at] = value
      if (value > tree.high[at]!) tree.high[at] = value
    }
    for (let way = 0; way < REACHES; way++) {
      const at = node * REACHES + way
      tree.reach[at] = Math.min(tree.reach[at]!, options.reaches[option * REACHES + way]!)
    }
    scarce.forEach((kind, index) => {
      const at = node * scarce.length + index
      tree.uses[at] = Math.min(tree.uses[at]!, options.uses[option * kinds + kind]!)
    })
    if (option < tree.earliest[node]!) tree.earliest[node] = option
  }

  /** The coordinate in which a node's options differ most; its width is noted on the way. */
  function widest(node: number): number {
    let along = 0
    let most = 0
    for (let dim = 0; dim < dims; dim++) {
      const width = (tree.high[node * dims + dim]! - tree.low[node * dims + dim]!) * coordinates.worth[dim]!
      if (width > most) {
        most = width
        along = dim
      }
    }
    // Alike in every coordinate is still not one option: such nodes are split last, but they are split.
    tree.width[node] = Math.max(most, Number.MIN_VALUE)
    return along
  }
}

/** Orders `order[from … to]` so that the entry at `middle` has its sorted place and no smaller key stands after it. */
function halve(order: Int32Array, key: Float64Array, from: number, to: number, middle: number): void {
  let low = from
  let high = to
  while (low < high) {
    const pivot = key[order[(low + high) >> 1]!]!
    let left = low
    let right = high
    while (left <= right) {
      while (key[order[left]!]! < pivot) left++
      while (key[order[right]!]! > pivot) right--
      if (left > right) continue
      const held = order[left]!
      order[left] = order[right]!
      order[right] = held
      left++
      right--
    }
    if (middle <= right) high = right
    else if (middle >= left) low = left
    else return
  }
}
