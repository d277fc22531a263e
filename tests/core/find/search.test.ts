import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { Best, chosenAt, combinations, enumerate, type FindProblem, Search, wholeOf } from "../../../src/core/find"
import { optionsOf, problem } from "./problems"

/** The whole search, trunk by trunk, each in `parts` parts. */
function searched(asked: FindProblem, parts: number, order = (tasks: [number, number][]) => tasks) {
  const best = new Best(asked.count)
  const search = new Search(asked, best)
  const tasks = asked.trunks.flatMap((_, trunk) =>
    Array.from({ length: parts }, (_, part): [number, number] => [trunk, part]),
  )
  for (const [trunk, part] of order(tasks)) {
    search.begin(trunk, part, parts)
    while (!search.advance(3));
  }
  return { list: best.list, covered: search.covered }
}

test("the best setups are those of plain enumeration, ties and all, and every setup is accounted for", () => {
  fc.assert(
    fc.property(problem, fc.integer({ min: 1, max: 5 }), (asked, parts) => {
      const { list, covered } = searched(asked, parts)
      expect(list).toEqual(enumerate(asked))
      expect(covered).toBe(combinations(asked))
    }),
    { seed: 20_417, numRuns: 1500 },
  )
})

test("of a group only the best is listed, as plain enumeration lists it", () => {
  fc.assert(
    fc.property(problem, fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 3 }), (asked, groups, parts) => {
      const grouped = { ...asked, groupOf: (order: number) => `g${(order * 7) % groups}` }
      const { list } = searched(grouped, parts)
      expect(list).toEqual(enumerate(grouped))
      const plain = enumerate({ ...asked, count: combinations(asked) + 1 })
      const firsts = new Map(plain.map(({ order }) => [grouped.groupOf(order), order] as const).reverse())
      expect(list.map(({ order }) => order)).toEqual(
        plain
          .map(({ order }) => order)
          .filter((order) => firsts.get(grouped.groupOf(order)) === order)
          .slice(0, asked.count),
      )
    }),
    { seed: 20_419, numRuns: 400 },
  )
})

test("in whatever order the parts are searched, and whoever has found what before, the list is the same", () => {
  fc.assert(
    fc.property(problem, (asked) => {
      const plain = enumerate(asked)
      expect(searched(asked, 3, (tasks) => tasks.reverse()).list).toEqual(plain)
      const last = plain.at(-1)
      if (plain.length < asked.count || last === undefined) return
      // Another worker has found the last of the list: what is better than it is still found.
      const best = new Best(asked.count)
      best.demand(last)
      const search = new Search(asked, best)
      asked.trunks.forEach((_, trunk) => {
        search.begin(trunk, 0, 1)
        while (!search.advance(100));
      })
      expect(best.list).toEqual(plain.slice(0, -1))
    }),
    { seed: 20_418, numRuns: 500 },
  )
})

describe("a hand-made problem", () => {
  const at = (mass: number, x: number, use = 0) => ({ mass, at: [x, 0, 0] as const, uses: [use, 0] })
  const made = (more: Partial<FindProblem>): FindProblem => ({
    base: Float64Array.from([2, 0, 0, 0, 0.1, 0.1, 0.1]),
    arrowMass: 0,
    drawn: { forwardMoment: 0, lift: 0 },
    reach: new Float64Array(2),
    trunks: [
      {
        own: optionsOf([at(0, 0)]),
        branches: [optionsOf([at(0.2, 0.3, 1), at(0.3, 0.5)]), optionsOf([at(0.1, 0.7, 1), at(0.5, 0.2)])],
      },
    ],
    stock: Uint8Array.of(2, 0),
    limits: [],
    score: { kind: "lightest" },
    count: 4,
    ...more,
  })
  const options = (asked: FindProblem) => searched(asked, 1).list.map(({ order }) => chosenAt(asked, order).options)

  test("ranks by the score asked for", () => {
    expect(options(made({}))).toEqual([
      [0, 0],
      [1, 0],
      [0, 1],
      [1, 1],
    ])
    expect(options(made({ score: { kind: "steadiest" } }))[0]).toEqual([1, 0])
    const limits = [{ kind: "balance" as const, axis: 0 as const, min: 0.05, max: 0.07 }]
    expect(options(made({ limits, score: { kind: "nearest" } }))[0]).toEqual([0, 1])
  })

  test("uses no more of a kind of piece than there is", () => {
    expect(options(made({ stock: Uint8Array.of(1, 0) }))).toEqual([
      [1, 0],
      [0, 1],
      [1, 1],
    ])
    expect(options(made({ stock: Uint8Array.of(0, 0) }))).toEqual([[1, 1]])
  })

  test("a value that stands on its limit is inside", () => {
    const { sums } = wholeOf(made({}), 0, [0, 1])
    const max = sums[1]! / sums[0]!
    expect(options(made({ limits: [{ kind: "balance", axis: 0, min: max, max }] }))).toEqual([[0, 1]])
  })

  test("a miss is the least way past a limit that nothing meets, the others kept", () => {
    const limits = [
      { kind: "mass" as const, max: 2.1 },
      { kind: "reach" as const, way: "forward" as const, max: 0.5 },
    ]
    const asked = made({ limits, score: { kind: "miss", limit: 0 } })
    expect(options(asked)).toEqual([
      [0, 1],
      [1, 1],
    ])
    expect(searched(asked, 1).list[0]!.first * 1e-9).toBeCloseTo(2.7 - 2.1, 9)
  })
})
