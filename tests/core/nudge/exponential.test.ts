import { expect, test } from "vitest"
import { exponential } from "../../../src/core/nudge/exponential"
import { inverse } from "../../../src/core/nudge/inverse"
import { expectNear } from "../near"

const square = (...rows: number[][]) => rows.map((row) => Float64Array.from(row))
const flat = (rows: readonly Float64Array[]) => rows.flatMap((row) => [...row])

test("the exponential of a diagonal matrix is that of its entries, small and large", () => {
  expectNear(flat(exponential(square([2, 0], [0, -3]))), [Math.exp(2), 0, 0, Math.exp(-3)])
  expectNear(flat(exponential(square([20, 0], [0, 7]))), [Math.exp(20), 0, 0, Math.exp(7)])
})

test("the exponential of a quarter turn's generator is the turn, and of a shift's is the shift", () => {
  const quarter = Math.PI / 2
  expectNear(flat(exponential(square([0, -quarter], [quarter, 0]))), [0, -1, 1, 0])
  expectNear(flat(exponential(square([0, 5, 7], [0, 0, 3], [0, 0, 0]))), [1, 5, 14.5, 0, 1, 3, 0, 0, 1])
})

test("a matrix that Moler and Van Loan's paper uses, whose plain series loses every digit", () => {
  // "Nineteen dubious ways", section 3: A = [-49 24; -64 31], e^A = [-0.735759 0.551819; -1.471518 1.103638].
  const found = flat(exponential(square([-49, 24], [-64, 31])))
  ;[-0.735759, 0.551819, -1.471518, 1.103638].forEach((value, index) => expect(found[index]).toBeCloseTo(value, 6))
})

test("the exponential needs finite entries", () => {
  expect(() => exponential(square([Number.NaN]))).toThrow(RangeError)
})

test("a matrix times its inverse is one, and one without a third direction has none", () => {
  const found = inverse([
    [2, 3, 5],
    [7, 11, 13],
    [17, 19, 29],
  ])!
  const product = [0, 1, 2].flatMap((i) =>
    [0, 1, 2].map((j) =>
      [2, 3, 5, 7, 11, 13, 17, 19, 29].slice(i * 3, i * 3 + 3).reduce((s, v, k) => s + v * found[k]![j]!, 0),
    ),
  )
  expectNear(product, [1, 0, 0, 0, 1, 0, 0, 0, 1], 1e-12)
  expect(
    inverse([
      [1, 2, 3],
      [2, 4, 6],
      [5, 7, 11],
    ]),
  ).toBeNull()
})
