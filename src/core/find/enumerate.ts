import { Best, type Found } from "./best"
import { addOption, judge, type Keys } from "./judge"
import { type FindProblem, firstOrders, strides } from "./problem"

/** The best setups by trying each one: what the search must agree with, for small kits. */
export function enumerate(problem: FindProblem): readonly Found[] {
  const best = new Best(problem.count)
  const firsts = firstOrders(problem)
  problem.trunks.forEach((trunk, at) => {
    const steps = strides(trunk)
    const chosen: number[] = []
    const visit = (branch: number, order: number) => {
      if (branch < trunk.branches.length) {
        for (let option = 0; option < trunk.branches[branch]!.count; option++) {
          chosen[branch] = option
          visit(branch + 1, order + option * steps[branch]!)
        }
        return
      }
      const used = Array.from(problem.stock, (_, kind) =>
        trunk.branches.reduce(
          (sum, { uses }, index) => sum + uses[chosen[index]! * problem.stock.length + kind]!,
          trunk.own.uses[kind]!,
        ),
      )
      if (used.some((many, kind) => many > problem.stock[kind]!)) return
      const { sums, reaches } = wholeOf(problem, at, chosen)
      const keys = judge(problem, sums, reaches)
      if (keys !== null) best.offer(foundAt(problem, keys, order))
    }
    visit(0, firsts[at]!)
  })
  return best.list
}

/** A judged setup as it is listed. */
export const foundAt = (problem: FindProblem, keys: Keys, order: number): Found =>
  problem.groupOf === undefined ? { ...keys, order } : { ...keys, order, group: problem.groupOf(order) }

/** Sums and reaches of one whole setup, added in the one order that every judgement uses. */
export function wholeOf(
  problem: FindProblem,
  trunk: number,
  options: readonly number[],
): { sums: Float64Array; reaches: Float64Array } {
  const sums = problem.base.slice()
  const reaches = problem.reach.slice()
  const { own, branches } = problem.trunks[trunk]!
  addOption(sums, reaches, own, 0)
  branches.forEach((branch, index) => {
    addOption(sums, reaches, branch, options[index]!)
  })
  return { sums, reaches }
}
