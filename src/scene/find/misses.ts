import { chosenAt, type FindProblem, type Found, type Limit, limitedValue, missOf, wholeOf } from "../../core/find"
import type { SetupSpace } from "./space"
import type { FindTarget } from "./question"

/** What is asked when no setup meets every limit: for each limit, how near one can come to it. */
export interface MissQuestion {
  readonly key: keyof FindTarget
  /** Whether the other limits are kept, or only this one is looked at. */
  readonly others: boolean
  readonly problem: FindProblem
}

/** How near to a limit the kit comes, in the unit of its key. */
export interface Miss {
  readonly key: keyof FindTarget
  /** Keeping all other limits; null when those cannot be kept even so. */
  readonly nearest: { readonly value: number; readonly by: number; readonly order: number } | null
  /** Keeping no other limit; null when there is nothing to build at all. */
  readonly alone: { readonly value: number; readonly by: number } | null
}

export function missQuestions({ problem, limitKeys }: Pick<SetupSpace, "problem" | "limitKeys">): MissQuestion[] {
  return limitKeys.flatMap((key, index) => [
    { key, others: true, problem: { ...problem, count: 1, score: { kind: "miss", limit: index } } },
    {
      key,
      others: false,
      problem: { ...problem, count: 1, limits: [problem.limits[index]!], score: { kind: "miss", limit: 0 } },
    },
  ])
}

/** The answers to `missQuestions`, in their order, put together by limit. */
export function missesOf(
  { problem, limitKeys }: Pick<SetupSpace, "problem" | "limitKeys">,
  answers: readonly (Found | null)[],
): Miss[] {
  return limitKeys.map((key, index) => {
    const limit = problem.limits[index]!
    const [kept, alone] = [answers[2 * index] ?? null, answers[2 * index + 1] ?? null]
    return {
      key,
      nearest: kept === null ? null : { ...valueAt(problem, limit, kept), order: kept.order },
      alone: alone === null ? null : valueAt(problem, limit, alone),
    }
  })
}

function valueAt(problem: FindProblem, limit: Limit, { order }: Found): { value: number; by: number } {
  const { trunk, options } = chosenAt(problem, order)
  const { sums, reaches } = wholeOf(problem, trunk, options)
  const value = limitedValue(problem, limit, sums, reaches)
  const scale = limit.kind === "netLift" || limit.kind === "resistance" ? 1 : 1e3
  return { value: value * scale, by: missOf(limit, value) * scale }
}
