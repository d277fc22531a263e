/** Small random problems for the search, with many equal setups among them. */
import fc from "fast-check"
import { type FindProblem, type Limit, type Options, REACHES, type Score, SUMS } from "../../../src/core/find"

const KINDS = 2

/** Coarse steps, so that many options and many sums coincide. */
const place = fc.integer({ min: -4, max: 7 }).map((step) => step * 0.13)
const option = fc.record({
  mass: fc.integer({ min: 0, max: 5 }).map((discs) => 0.02 + discs * 0.028),
  at: fc.tuple(place, place, place),
  uses: fc.tuple(fc.integer({ min: 0, max: 2 }), fc.integer({ min: 0, max: 1 })),
})

/** Options from point masses. */
export function optionsOf(
  rows: readonly { mass: number; at: readonly [number, number, number]; uses: readonly number[] }[],
): Options {
  const sums = new Float64Array(rows.length * SUMS)
  const reaches = new Float64Array(rows.length * REACHES)
  const uses = new Uint8Array(rows.length * KINDS)
  rows.forEach(({ mass, at: [x, y, z], uses: used }, row) => {
    const squares = [y * y + z * z, x * x + z * z, x * x + y * y].map((square) => mass * square)
    sums.set([mass, mass * x, mass * y, mass * z, ...squares], row * SUMS)
    reaches.set([x, Math.abs(z)], row * REACHES)
    uses.set(used, row * KINDS)
  })
  return { count: rows.length, sums, reaches, uses }
}

const range = (min: number, max: number) =>
  fc
    .tuple(fc.double({ min, max, noNaN: true }), fc.double({ min, max, noNaN: true }))
    .map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) }))

const limit: fc.Arbitrary<Limit> = fc.oneof(
  fc
    .record({ axis: fc.constantFrom(0 as const, 1 as const, 2 as const), range: range(-0.1, 0.2) })
    .map(({ axis, range }): Limit => ({ kind: "balance", axis, ...range })),
  range(-3, 3).map((between): Limit => ({ kind: "netLift", ...between })),
  fc.double({ min: 2, max: 2.6, noNaN: true }).map((max): Limit => ({ kind: "mass", max })),
  fc.record({
    kind: fc.constant("resistance" as const),
    axis: fc.constantFrom("roll" as const, "yaw" as const, "pitch" as const),
    min: fc.double({ min: 0.05, max: 0.4, noNaN: true }),
  }),
  fc.record({
    kind: fc.constant("reach" as const),
    way: fc.constantFrom("forward" as const, "side" as const),
    max: fc.integer({ min: 0, max: 7 }).map((step) => step * 0.13),
  }),
)

const score = (limits: number): fc.Arbitrary<Score> =>
  fc.oneof(
    fc.constantFrom("nearest", "lightest", "steadiest", "steadyForMass").map((kind): Score => ({ kind }) as Score),
    ...(limits > 0 ? [fc.nat(limits - 1).map((index): Score => ({ kind: "miss", limit: index }))] : []),
  )

const branch = (least: number) => fc.array(option, { minLength: least, maxLength: 9 }).map(optionsOf)

/** Every kind of limit and score, one to three branches, some trunks without any setup. */
export const problem: fc.Arbitrary<FindProblem> = fc
  .record({
    branches: fc.integer({ min: 1, max: 3 }),
    limits: fc.array(limit, { maxLength: 4 }),
    count: fc.integer({ min: 1, max: 12 }),
    stock: fc.tuple(fc.integer({ min: 0, max: 5 }), fc.integer({ min: 0, max: 3 })),
    arrow: fc.constantFrom(0, 0.019),
  })
  .chain(({ branches, limits, count, stock, arrow }) =>
    fc.record({
      base: fc.constant(Float64Array.from([1.87 + arrow, 0.031, -0.017, 0.0053, 0.13, 0.019, 0.14])),
      arrowMass: fc.constant(arrow),
      drawn: fc.constant({ forwardMoment: 0.023, lift: 1.7 }),
      reach: fc.constant(Float64Array.of(0.05, 0.02)),
      trunks: fc.array(
        fc.record({
          own: option.map((row) => optionsOf([row])),
          branches: fc.tuple(...Array.from({ length: branches }, () => branch(0))),
        }),
        { minLength: 1, maxLength: 3 },
      ),
      stock: fc.constant(Uint8Array.from(stock)),
      limits: fc.constant(limits),
      score: score(limits.length),
      count: fc.constant(count),
    }),
  )
