/** One thing that can be chosen for a branch or as trunk: what it adds, where it reaches, what it takes from the kit. */
export interface Options {
  readonly count: number
  /** `count` rows of SUMS. */
  readonly sums: Float64Array
  /** `count` rows of REACHES, m. */
  readonly reaches: Float64Array
  /** `count` rows of as many numbers as the kit has kinds of pieces: how many of each are used. */
  readonly uses: Uint8Array
}

/** One way to set up what the branches hang from. The branches' sums already stand where this trunk puts them. */
export interface Trunk {
  /** A single row. */
  readonly own: Options
  /** Exactly one option of each branch is taken. Every trunk has the same number of branches. */
  readonly branches: readonly Options[]
}

export type Limit =
  /** Balance point on axis 0 … 2 (x, y, z), m, in the hold of `FindProblem.base`. */
  | { readonly kind: "balance"; readonly axis: 0 | 1 | 2; readonly min: number; readonly max: number }
  /** Net lift at full draw, N·m. */
  | { readonly kind: "netLift"; readonly min: number; readonly max: number }
  /** Mass without the arrow, kg. */
  | { readonly kind: "mass"; readonly max: number }
  /** Turn resistance about the grip, kg·m², in the hold of `FindProblem.base`. */
  | { readonly kind: "resistance"; readonly axis: "roll" | "yaw" | "pitch"; readonly min: number }
  /** How far the rig sticks out, m. */
  | { readonly kind: "reach"; readonly way: "forward" | "side"; readonly max: number }

/**
 * What "best" means. `nearest`: least distance from the middle of the targets, each in its half-widths. `lightest`:
 * least mass. `steadiest`: most turn resistance, the three axes together. `steadyForMass`: most of that per mass of
 * the whole bow. `miss`: least violation of one limit, by its place in the list, SI; that limit then does not bind.
 */
export type Score =
  | { readonly kind: "nearest" | "lightest" | "steadiest" | "steadyForMass" }
  | { readonly kind: "miss"; readonly limit: number }

export interface FindProblem {
  /** Everything that stays, SUMS, in the hold in which balance point and turn resistance are judged. */
  readonly base: Float64Array
  /** Mass of the arrow where `base` has it on the string, kg, else 0: it counts for the balance, not for the mass. */
  readonly arrowMass: number
  /** What stays at full draw: its first moment along x, kg·m, and the lift of the line of pull, N·m. */
  readonly drawn: { readonly forwardMoment: number; readonly lift: number }
  /** REACHES of the rig that stays. */
  readonly reach: Float64Array
  readonly trunks: readonly Trunk[]
  /** How many pieces of each kind there are. */
  readonly stock: Uint8Array
  readonly limits: readonly Limit[]
  readonly score: Score
  /** How many setups are wanted. */
  readonly count: number
  /** Which group the setup at a place of the order belongs to; only the best of each is then listed. */
  groupOf?(order: number): string
}

/** How many setups a trunk has, pieces running out or not. */
export const combinationsOf = (trunk: Trunk): number =>
  trunk.branches.reduce((product, { count }) => product * count, 1)

/** How many setups there are, pieces running out or not. Exact up to 2^53. */
export const combinations = (problem: FindProblem): number =>
  problem.trunks.reduce((sum, trunk) => sum + combinationsOf(trunk), 0)

/** The place of each trunk's first setup in the order of plain enumeration: trunks, then branches, the last fastest. */
export function firstOrders(problem: FindProblem): number[] {
  let next = 0
  return problem.trunks.map((trunk) => {
    const first = next
    next += combinationsOf(trunk)
    return first
  })
}

/** How far apart in that order two neighbours in each branch of a trunk stand. */
export function strides({ branches }: Trunk): number[] {
  const found = new Array<number>(branches.length).fill(1)
  for (let branch = branches.length - 2; branch >= 0; branch--) {
    found[branch] = found[branch + 1]! * branches[branch + 1]!.count
  }
  return found
}

/** The trunk and the option of each branch that stand at a place of the order. */
export function chosenAt(problem: FindProblem, order: number): { trunk: number; options: number[] } {
  const firsts = firstOrders(problem)
  const trunk = firsts.findLastIndex(
    (first, index) => first <= order && problem.trunks[index]!.branches.every((b) => b.count > 0),
  )
  let rest = order - firsts[trunk]!
  const options = strides(problem.trunks[trunk]!).map((stride) => {
    const option = Math.floor(rest / stride)
    rest -= option * stride
    return option
  })
  return { trunk, options }
}
