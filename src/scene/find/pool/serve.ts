import { Best, combinations, combinationsOf, type FindProblem, Search } from "../../../core/find"
import { foundSetup } from "../answers"
import { missOfLimit } from "../misses"
import { type SetupSpace, setupSpace } from "../space"
import type { Asked, Order, Report, Task } from "./messages"

/** Bundles looked into before a worker listens again: some ten milliseconds. */
const SLICE = 10_000
/** Slices between two reports of progress. */
const SLICES_IN_REPORT = 5

/**
 * The inside of a worker: answers orders through `post`. `pause` lets waiting orders in and resolves soon after.
 * Returns what is to be called with each order.
 */
export function serveFind(post: (report: Report) => void, pause: () => Promise<void>): (order: Order) => void {
  let space: SetupSpace | null = null
  let best = new Best(0)
  let search: Search | null = null
  const told = new Set<number>()

  const ask = ({ scene, kit, question }: Asked) => {
    post({ kind: "alive" })
    const made = setupSpace(scene, kit, question)
    if (!made.ok) return post({ kind: "refused", fault: made.fault })
    post({ kind: "alive" })
    space = made.value
    const { problem } = space
    best = new Best(problem.count)
    search = new Search(problem, best)
    const outlooks = problem.trunks.map((_, trunk) => ({ trunk, keys: search!.outlook(trunk) }))
    const hopeful = outlooks.flatMap(({ trunk, keys }) => (keys === null ? [] : [{ trunk, ...keys }]))
    hopeful.sort((a, b) => a.first - b.first || a.second - b.second || a.trunk - b.trunk)
    const hopeless = outlooks.filter(({ keys }) => keys === null)
    post({
      kind: "ready",
      trunks: hopeful.map(({ trunk }) => trunk),
      combinations: combinations(problem),
      covered: hopeless.reduce((sum, { trunk }) => sum + combinationsOf(problem.trunks[trunk]!), 0),
      limits: problem.limits.length,
    })
  }

  const report = (kind: "progress" | "done", covered: number) => {
    const fresh = best.list.filter(({ order }) => !told.has(order))
    for (const { order } of fresh) told.add(order)
    const setups = fresh.map((found) => foundSetup(space!, found))
    post({ kind, covered, found: [...best.list], setups })
  }

  const take = async (task: Task) => {
    if (space === null || search === null) return
    if (task.kind === "miss") {
      post({ kind: "missed", miss: await missOfLimit(space, task.limit, searchInSlices) })
      return
    }
    const before = search.covered
    search.begin(task.trunk, task.part, task.parts)
    for (let slices = 1; !search.advance(SLICE); slices++) {
      if (slices % SLICES_IN_REPORT === 0) report("progress", search.covered - before)
      await pause()
    }
    report("done", search.covered - before)
  }

  /** A whole search beside the main one; says now and then that it is alive. */
  const searchInSlices = async (problem: FindProblem) => {
    const found = new Best(problem.count)
    const beside = new Search(problem, found)
    for (const trunk of problem.trunks.keys()) {
      beside.begin(trunk, 0, 1)
      for (let slices = 1; !beside.advance(SLICE); slices++) {
        if (slices % SLICES_IN_REPORT === 0) post({ kind: "progress", covered: 0, found: [], setups: [] })
        await pause()
      }
    }
    return { found: found.list }
  }

  return (order) => {
    if (order.kind === "ask") ask(order.asked)
    else if (order.kind === "demand") best.demand(order.demand)
    else {
      if (order.demand !== null) best.demand(order.demand)
      void take(order.task)
    }
  }
}
