import {
  type Answer,
  chosenAt,
  type FindProblem,
  type Found,
  type Limit,
  limitedValue,
  missOf,
  wholeOf,
} from "../../core/find"
import { type FoundSetup, foundSetup } from "./answers"
import type { FindTarget } from "./question"
import type { SetupSpace } from "./space"

/** How near to a limit the kit comes when no setup meets them all, in the unit of its key. */
export interface Miss {
  readonly key: keyof FindTarget
  /** Keeping all other limits; null when those cannot be kept even so. */
  readonly nearest: { readonly value: number; readonly by: number; readonly setup: FoundSetup } | null
  /** Keeping no other limit; null when there is nothing to build at all. */
  readonly alone: { readonly value: number; readonly by: number } | null
}

/** The nearest miss of the limit at `index` of the problem's list. `search` answers a whole problem. */
export async function missOfLimit(
  space: Pick<SetupSpace, "problem" | "limitKeys" | "rigAt">,
  index: number,
  search: (problem: FindProblem) => Promise<Pick<Answer, "found">>,
): Promise<Miss> {
  const { problem, limitKeys, rigAt } = space
  const limit = problem.limits[index]!
  const kept: FindProblem = { ...problem, count: 1, score: { kind: "miss", limit: index } }
  const single: FindProblem = { ...problem, count: 1, limits: [limit], score: { kind: "miss", limit: 0 } }
  const [nearest] = (await search(kept)).found
  const [alone] = (await search(single)).found
  return {
    key: limitKeys[index]!,
    nearest:
      nearest === undefined
        ? null
        : { ...missed(problem, limit, nearest), setup: foundSetup({ problem: kept, rigAt }, nearest) },
    alone: alone === undefined ? null : missed(problem, limit, alone),
  }
}

function missed(problem: FindProblem, limit: Limit, { order }: Found): { value: number; by: number } {
  const { trunk, options } = chosenAt(problem, order)
  const { sums, reaches } = wholeOf(problem, trunk, options)
  const value = limitedValue(problem, limit, sums, reaches)
  const scale = limit.kind === "netLift" || limit.kind === "resistance" ? 1 : 1e3
  return { value: value * scale, by: missOf(limit, value) * scale }
}
