/** What holds of any bodies with mass, whatever they are. */
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { gravityInBow, poseRotation } from "../../src/core/balance"
import {
  box,
  compose,
  dot,
  gyrating,
  type Mat3,
  multiply,
  norm,
  pointSolid,
  pointTensor,
  principal,
  rotateTensor,
  type Solid,
  scale,
  slender,
  subtract,
  type Tensor,
  tensorAbout,
  tube,
  unit,
  type Vec3,
} from "../../src/core/solids"
import { members } from "../core/near"
import { SEED } from "./arbitraries"

const mass = fc.double({ min: 0, max: 5, noNaN: true })
const size = fc.double({ min: 1e-3, max: 2, noNaN: true })
const place = fc.double({ min: -2, max: 2, noNaN: true })
const vector: fc.Arbitrary<Vec3> = fc.tuple(place, place, place)
const direction = vector.filter((each) => norm(each) > 1e-3).map(unit)
const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true })
const rotation = fc.tuple(angle, angle).map(([one, two]) => poseRotation(one, two))

const solid: fc.Arbitrary<Solid> = fc.oneof(
  fc.tuple(mass, vector).map(([m, c]) => pointSolid(m, c)),
  fc.tuple(mass, vector, fc.tuple(size, size, size)).map(([m, c, edges]) => box(m, c, edges)),
  fc.tuple(mass, vector, vector).map(([m, a, b]) => slender(m, a, b)),
  fc
    .tuple(mass, vector, direction, size, size, fc.double({ min: 0, max: 1, noNaN: true }))
    .map(([m, c, d, length, outer, bore]) => tube(m, c, d, length, outer, bore * outer)),
  fc
    .tuple(mass, vector, size, size, size)
    .map(([m, c, a, b, k]) => gyrating(m, c, [Math.sqrt(b + k), Math.sqrt(a + k), Math.sqrt(a + b)])),
)
const solids = fc.array(solid, { minLength: 1, maxLength: 10 })
const heavy = solids.filter((each) => each.reduce((sum, { mass: m }) => sum + m, 0) > 0.01)

/** Float64 rounding of sums of tens of terms, relative to the sum of their sizes. */
const ROUNDING = 1e-12
/** The natural size of a pile's tensor: as if each body's whole were as far away as it reaches. */
const reach = (pile: readonly Solid[], more = 0) =>
  pile.reduce(
    (sum, each) =>
      sum +
      members(each.aboutCentre).reduce((a, b) => a + Math.abs(b), 0) +
      each.mass * (norm(each.centre) + more) ** 2,
    1e-9,
  )

function expectSame(actual: readonly number[], wanted: readonly number[], scaleOf: number): void {
  actual.forEach((value, index) => {
    expect(Math.abs(value - wanted[index]!)).toBeLessThanOrEqual(ROUNDING * scaleOf)
  })
}
const expectTensor = (actual: Tensor, wanted: Tensor, scaleOf: number) =>
  expectSame(members(actual), members(wanted), scaleOf)

const turned = (each: Solid, r: Mat3): Solid => ({
  mass: each.mass,
  centre: multiply(r, each.centre),
  aboutCentre: rotateTensor(each.aboutCentre, r),
})
const moved = (each: Solid, by: Vec3): Solid => ({ ...each, centre: subtract(each.centre, scale(by, -1)) })
const RUNS = { seed: SEED, numRuns: 400 }

describe("composing", () => {
  test("masses add, and so do first moments", () => {
    fc.assert(
      fc.property(solids, solids, (one, other) => {
        const [a, b, both] = [compose(one), compose(other), compose([...one, ...other])]
        expectSame([both.mass], [a.mass + b.mass], both.mass)
        for (const axis of [0, 1, 2] as const) {
          expectSame(
            [both.mass * both.centre[axis]],
            [a.mass * a.centre[axis] + b.mass * b.centre[axis]],
            2 * both.mass,
          )
        }
      }),
      RUNS,
    )
  })

  test("in two steps is composing at once", () => {
    fc.assert(
      fc.property(heavy, heavy, (one, other) => {
        const both = compose([...one, ...other])
        const steps = compose([compose(one), compose(other)])
        const scaleOf = reach([...one, ...other])
        expectTensor(steps.aboutCentre, both.aboutCentre, scaleOf)
        expectTensor(steps.aboutOrigin, both.aboutOrigin, scaleOf)
      }),
      RUNS,
    )
  })

  test("in another order gives the same", () => {
    fc.assert(
      fc.property(heavy, (pile) => {
        const [one, other] = [compose(pile), compose([...pile].reverse())]
        expectTensor(one.aboutCentre, other.aboutCentre, reach(pile))
        expectSame(one.centre, other.centre, 2)
      }),
      RUNS,
    )
  })
})

describe("a pile that is", () => {
  test("turned has its centre and tensors turned, its principal moments unchanged", () => {
    fc.assert(
      fc.property(heavy, rotation, (pile, r) => {
        const [was, is] = [compose(pile), compose(pile.map((each) => turned(each, r)))]
        const scaleOf = reach(pile)
        expectSame(is.centre, multiply(r, was.centre), 4)
        expectTensor(is.aboutCentre, rotateTensor(was.aboutCentre, r), scaleOf)
        expectTensor(is.aboutOrigin, rotateTensor(was.aboutOrigin, r), scaleOf)
        expectSame(principal(is.aboutCentre).moments, principal(was.aboutCentre).moments, scaleOf)
      }),
      RUNS,
    )
  })

  test("moved has its centre moved and its tensor about it unchanged", () => {
    fc.assert(
      fc.property(heavy, vector, (pile, by) => {
        const [was, is] = [compose(pile), compose(pile.map((each) => moved(each, by)))]
        expectSame(subtract(is.centre, was.centre), by, 4)
        expectTensor(is.aboutCentre, was.aboutCentre, reach(pile, norm(by)))
      }),
      RUNS,
    )
  })
})

test("about any point the tensor exceeds the one about the centre by M at their distance", () => {
  fc.assert(
    fc.property(heavy, vector, (pile, point) => {
      const whole = compose(pile)
      const far = pointTensor(whole.mass, subtract(whole.centre, point))
      const sum = members(whole.aboutCentre).map((member, index) => member + members(far)[index]!)
      expectSame(members(tensorAbout(pile, point)), sum, reach(pile, norm(point)))
    }),
    RUNS,
  )
})

test("principal moments are no less than nothing, keep the trace, and none exceeds the other two together", () => {
  fc.assert(
    fc.property(heavy, vector, (pile, point) => {
      const tensor = tensorAbout(pile, point)
      const [a, b, c] = principal(tensor).moments
      const slack = ROUNDING * reach(pile, norm(point))
      expect(a).toBeGreaterThanOrEqual(-slack)
      expect(c).toBeLessThanOrEqual(a + b + slack)
      expectSame([a + b + c], [tensor.xx + tensor.yy + tensor.zz], reach(pile, norm(point)))
    }),
    RUNS,
  )
})

test("the trace about a point is twice the sum of m r² over any way to cut the bodies to points", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(mass, vector), { minLength: 1, maxLength: 20 }), (points) => {
      const tensor = tensorAbout(
        points.map(([m, at]) => pointSolid(m, at)),
        [0, 0, 0],
      )
      const sum = points.reduce((total, [m, at]) => total + 2 * m * dot(at, at), 0)
      expectSame([tensor.xx + tensor.yy + tensor.zz], [sum], sum + 1e-9)
    }),
    RUNS,
  )
})

test("a tube cut across into two is the tube", () => {
  const fraction = fc.double({ min: 0, max: 1, noNaN: true })
  fc.assert(
    fc.property(mass, vector, direction, size, size, fraction, fraction, (m, start, d, length, outer, bore, cut) => {
      const inner = bore * outer
      const whole = tube(m, start, d, length, outer, inner)
      const second: Vec3 = subtract(start, scale(d, -cut * length))
      const parts = compose([
        tube(m * cut, start, d, cut * length, outer, inner),
        tube(m * (1 - cut), second, d, (1 - cut) * length, outer, inner),
      ])
      if (m > 0.01) expectSame(parts.centre, whole.centre, 4)
      expectTensor(parts.aboutOrigin, compose([whole]).aboutOrigin, reach([whole], length))
    }),
    RUNS,
  )
})

test("how a bow is held is a rotation: orthogonal, right-handed, and gravity of unit length in its frame", () => {
  fc.assert(
    fc.property(rotation, (r) => {
      for (let i = 0; i < 3; i++) {
        for (let j = 0; j < 3; j++) expectSame([dot(r[i]!, r[j]!)], [i === j ? 1 : 0], 1)
      }
      const [[a, b, c], [d, e, f], [g, h, k]] = r
      expectSame([a * (e * k - f * h) - b * (d * k - f * g) + c * (d * h - e * g)], [1], 1)
      expectSame([norm(gravityInBow(r))], [1], 1)
      expectSame(multiply(r, gravityInBow(r)), [0, -1, 0], 1)
    }),
    RUNS,
  )
})
