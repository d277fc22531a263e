import { expect, test } from "vitest"
import { phi } from "../../../../src/core/swing/motion/damped"

/** φₖ(z) = ∫₀¹ e^{(1-u)z} u^{k-1}/(k-1)! du, by Simpson's rule on 2000 parts: an independent way to the same number. */
function byIntegral(order: number, z: number): number {
  const parts = 2000
  const factorial = [1, 1, 2, 6][order - 1]!
  const integrand = (u: number) => (Math.exp((1 - u) * z) * u ** (order - 1)) / factorial
  let sum = integrand(0) + integrand(1)
  for (let index = 1; index < parts; index++) sum += (index % 2 === 1 ? 4 : 2) * integrand(index / parts)
  return sum / (3 * parts)
}

const ORDERS = [1, 2, 3, 4]
const DECAYS = [0, -1e-9, -0.3, -1.99, -2.01, -7, -31]

test.each(ORDERS.flatMap((order) => DECAYS.map((z) => [order, z])))("φ%d(%d) is its integral", (order, z) => {
  expect(Math.abs(phi(order!, z!) - byIntegral(order!, z!))).toBeLessThanOrEqual(1e-9)
})

test("both ways of working φ out meet where one takes over from the other", () => {
  for (const order of ORDERS) {
    expect(Math.abs(phi(order, -2 - 1e-12) - phi(order, -2))).toBeLessThanOrEqual(1e-12)
  }
})
