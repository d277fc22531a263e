import type { Best } from "./best"
import { type Bound, boundOf, type Range } from "./bounds"
import { type Coordinates, coordinatesOf, coordinatesOfOptions } from "./coordinates"
import { foundAt, wholeOf } from "./enumerate"
import { judge, type Keys } from "./judge"
import { combinationsOf, type FindProblem, firstOrders, strides } from "./problem"
import { REACHES } from "./quantities"
import { Tree } from "./tree"

/** A trunk made ready for searching. */
interface Ready {
  readonly trunk: number
  readonly trees: readonly Tree[]
  readonly strides: readonly number[]
  readonly firstOrder: number
  /** Coordinates of base and trunk, reaches and scarce uses of both. */
  readonly own: Float64Array
  readonly reach: Float64Array
  readonly uses: readonly number[]
}

/** Setups not yet looked into: one node of each branch's tree, and what they can at best come to. */
interface Bundle {
  readonly nodes: Int32Array
  readonly first: number
  readonly second: number
  /** Of the earliest setup in it. */
  readonly order: number
}

/**
 * Branch and bound over the product of the branches' trees. A bundle of setups is left out only when its bound says
 * that none can meet the limits or come among the best, so the list is that of plain enumeration.
 */
export class Search {
  /** Setups dealt with so far: judged, or left out with their bundle. */
  covered = 0
  private readonly coordinates: Coordinates
  private readonly bound: Bound
  private readonly firsts: readonly number[]
  private readonly scarce: readonly number[]
  private readonly pending: Bundle[] = []
  private ready: Ready | null = null
  private readonly range: Range
  private readonly othersLow: Float64Array
  private readonly othersHigh: Float64Array
  private readonly othersReach = new Float64Array(REACHES)

  constructor(
    private readonly problem: FindProblem,
    private readonly best: Best,
  ) {
    this.coordinates = coordinatesOf(problem)
    this.bound = boundOf(problem, this.coordinates)
    this.firsts = firstOrders(problem)
    this.scarce = scarceKinds(problem)
    const { count } = this.coordinates
    this.range = { low: new Float64Array(count), high: new Float64Array(count), reach: new Float64Array(REACHES) }
    this.othersLow = new Float64Array(count)
    this.othersHigh = new Float64Array(count)
  }

  /** Takes up part `part` of `parts` of a trunk's setups. The parts are the same whoever asks. */
  begin(trunk: number, part: number, parts: number): void {
    this.pending.length = 0
    if (combinationsOf(this.problem.trunks[trunk]!) === 0) return
    if (this.ready?.trunk !== trunk) this.ready = this.prepare(trunk)
    const { trees } = this.ready
    const pieces = [new Int32Array(trees.length)]
    while (pieces.length < parts) {
      let largest = 0
      for (let index = 1; index < pieces.length; index++) {
        if (this.sizeOf(pieces[index]!) > this.sizeOf(pieces[largest]!)) largest = index
      }
      const at = this.branchToSplit(pieces[largest]!)
      if (at < 0) break
      const half = trees[at]!.half(pieces[largest]![at]!)
      const other = pieces[largest]!.slice()
      other[at] = half + 1
      pieces[largest]![at] = half
      pieces.push(other)
    }
    const mine = pieces[part]
    if (mine === undefined) return
    this.addOthers(-1, mine)
    this.push(mine, -1)
  }

  /** What a trunk's setups can at best come to; null when none can meet the limits. */
  outlook(trunk: number): Keys | null {
    if (combinationsOf(this.problem.trunks[trunk]!) === 0) return null
    this.ready = this.prepare(trunk)
    const root = new Int32Array(this.ready.trees.length)
    this.addOthers(-1, root)
    return this.hoped(root, -1)
  }

  /** Looks into up to `bundles` bundles. True when nothing is left of what was begun. */
  advance(bundles: number): boolean {
    for (let count = 0; count < bundles; count++) {
      const bundle = this.pending.pop()
      if (bundle === undefined) return true
      if (this.best.beats(bundle.first, bundle.second, bundle.order)) {
        this.covered += this.sizeOf(bundle.nodes)
        continue
      }
      this.lookInto(bundle)
    }
    return this.pending.length === 0
  }

  private lookInto({ nodes, order }: Bundle): void {
    const { trees } = this.ready!
    const at = this.branchToSplit(nodes)
    if (at < 0) {
      this.covered++
      const options = trees.map((tree, branch) => tree.earliest[nodes[branch]!]!)
      const { sums, reaches } = wholeOf(this.problem, this.ready!.trunk, options)
      const keys = judge(this.problem, sums, reaches)
      if (keys !== null && !this.best.beats(keys.first, keys.second, order)) {
        this.best.offer(foundAt(this.problem, keys, order))
      }
      return
    }
    const half = trees[at]!.half(nodes[at]!)
    this.addOthers(at, nodes)
    const other = nodes.slice()
    nodes[at] = half
    other[at] = half + 1
    this.push(nodes, at)
    const before = this.pending.length
    this.push(other, at)
    // The more promising half is looked into first.
    if (before === 0 || this.pending.length === before) return
    const [last, earlier] = [this.pending[before]!, this.pending[before - 1]!]
    if (earlier.nodes !== nodes) return
    if (last.first > earlier.first || (last.first === earlier.first && last.second > earlier.second)) {
      this.pending[before] = earlier
      this.pending[before - 1] = last
    }
  }

  /** Puts a bundle on the pile, or counts it as covered. `addOthers(at, nodes)` has been called. */
  private push(nodes: Int32Array, at: number): void {
    const bundle = this.hoped(nodes, at)
    if (bundle === null) this.covered += this.sizeOf(nodes)
    else this.pending.push(bundle)
  }

  /** The bundle with its bound, or null when nothing in it can be wanted. */
  private hoped(nodes: Int32Array, at: number): Bundle | null {
    const { trees, uses, firstOrder, strides } = this.ready!
    for (let kind = 0; kind < this.scarce.length; kind++) {
      let used = uses[kind]!
      for (let branch = 0; branch < trees.length; branch++) {
        used += trees[branch]!.uses[nodes[branch]! * this.scarce.length + kind]!
      }
      if (used > this.problem.stock[this.scarce[kind]!]!) return null
    }
    const { low, high, reach } = this.range
    if (at < 0) {
      low.set(this.othersLow)
      high.set(this.othersHigh)
      reach.set(this.othersReach)
    } else {
      const tree = trees[at]!
      const row = nodes[at]! * this.coordinates.count
      for (let dim = 0; dim < low.length; dim++) {
        low[dim] = this.othersLow[dim]! + tree.low[row + dim]!
        high[dim] = this.othersHigh[dim]! + tree.high[row + dim]!
      }
      for (let way = 0; way < REACHES; way++) {
        reach[way] = Math.max(this.othersReach[way]!, tree.reach[nodes[at]! * REACHES + way]!)
      }
    }
    const keys = this.bound(this.range)
    if (keys === null) return null
    let order = firstOrder
    for (let branch = 0; branch < trees.length; branch++) {
      order += trees[branch]!.earliest[nodes[branch]!]! * strides[branch]!
    }
    if (this.best.beats(keys.first, keys.second, order)) return null
    return { nodes, first: keys.first, second: keys.second, order }
  }

  /** Ranges of base, trunk and every branch but `at`; of all with -1. */
  private addOthers(at: number, nodes: Int32Array): void {
    const { own, reach, trees } = this.ready!
    const { othersLow, othersHigh, othersReach } = this
    const dims = othersLow.length
    othersLow.set(own)
    othersHigh.set(own)
    othersReach.set(reach)
    for (let branch = 0; branch < trees.length; branch++) {
      if (branch === at) continue
      const tree = trees[branch]!
      const row = nodes[branch]! * dims
      for (let dim = 0; dim < dims; dim++) {
        othersLow[dim]! += tree.low[row + dim]!
        othersHigh[dim]! += tree.high[row + dim]!
      }
      for (let way = 0; way < REACHES; way++) {
        othersReach[way] = Math.max(othersReach[way]!, tree.reach[nodes[branch]! * REACHES + way]!)
      }
    }
  }

  private sizeOf(nodes: Int32Array): number {
    let size = 1
    for (let branch = 0; branch < nodes.length; branch++) size *= this.ready!.trees[branch]!.size[nodes[branch]!]!
    return size
  }

  /** The branch whose options differ most, or -1 when a single setup is left. */
  private branchToSplit(nodes: Int32Array): number {
    let at = -1
    let most = 0
    for (let branch = 0; branch < nodes.length; branch++) {
      const width = this.ready!.trees[branch]!.width[nodes[branch]!]!
      if (width > most) {
        most = width
        at = branch
      }
    }
    return at
  }

  private prepare(trunk: number): Ready {
    const { coordinates, scarce, problem } = this
    const { own, branches } = problem.trunks[trunk]!
    const kinds = problem.stock.length
    const added = coordinatesOfOptions(coordinates, own.sums, 1)
    return {
      trunk,
      trees: branches.map((branch) => new Tree(branch, coordinates, scarce, kinds)),
      strides: strides(problem.trunks[trunk]!),
      firstOrder: this.firsts[trunk]!,
      own: added.map((value, dim) => value + coordinates.base[dim]!),
      reach: problem.reach.map((value, way) => Math.max(value, own.reaches[way]!)),
      uses: scarce.map((kind) => own.uses[kind]!),
    }
  }
}

/** Kinds of pieces that some setup could run out of. */
function scarceKinds({ trunks, stock }: FindProblem): number[] {
  const kinds = stock.length
  const most = (uses: Uint8Array, kind: number) => {
    let found = 0
    for (let row = kind; row < uses.length; row += kinds) found = Math.max(found, uses[row]!)
    return found
  }
  return Array.from(stock.keys()).filter((kind) =>
    trunks.some(
      ({ own, branches }) =>
        own.uses[kind]! + branches.reduce((sum, { uses }) => sum + most(uses, kind), 0) > stock[kind]!,
    ),
  )
}
