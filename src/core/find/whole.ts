import { Best, type Found } from "./best"
import { type FindProblem, combinations } from "./problem"
import { Search } from "./search"

export interface Answer {
  /** Best first. */
  readonly found: readonly Found[]
  /** How many setups there are, and of how many it is known whether they belong in the list. */
  readonly combinations: number
  readonly covered: number
}

/** Bundles looked into at a time where nobody waits for progress. */
const AT_A_TIME = 100_000

/** Runs a whole search in one go. */
export function searchWhole(problem: FindProblem): Answer {
  const best = new Best(problem.count)
  const search = new Search(problem, best)
  problem.trunks.forEach((_, trunk) => {
    search.begin(trunk, 0, 1)
    while (!search.advance(AT_A_TIME));
  })
  return { found: best.list, combinations: combinations(problem), covered: search.covered }
}
