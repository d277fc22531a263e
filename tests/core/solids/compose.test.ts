import { describe, expect, test } from "vitest"
import { compose, pointSolid, slender, tensorAbout, tube, type Vec3 } from "../../../src/core/solids"
import { expectNear, expectTensor } from "../near"

describe("solids as one", () => {
  test("two points: total mass, weighted centre, and m₁m₂/(m₁+m₂) d² about it", () => {
    const whole = compose([pointSolid(2, [1, 3, 5]), pointSolid(3, [1, 8, 5])])
    expect([whole.mass, whole.centre]).toEqual([5, [1, 6, 5]])
    const reduced = ((2 * 3) / 5) * 25
    expectTensor(whole.aboutCentre, { xx: reduced, yy: 0, zz: reduced, xy: 0, xz: 0, yz: 0 })
  })

  test("about the origin, the products stand off the diagonal with a minus", () => {
    expectTensor(compose([pointSolid(2, [3, 5, 7])]).aboutOrigin, {
      xx: 2 * (25 + 49),
      yy: 2 * (9 + 49),
      zz: 2 * (9 + 25),
      xy: -30,
      xz: -42,
      yz: -70,
    })
  })

  test("one solid alone is itself", () => {
    const one = tube(3, [2, 5, 7], [0, 0.6, 0.8], 11, 2, 1)
    const whole = compose([one])
    expectNear([...whole.centre], [...one.centre])
    expectTensor(whole.aboutCentre, one.aboutCentre)
  })

  test("a weightless solid changes nothing", () => {
    const solids = [slender(2, [3, 5, 7], [5, 7, 11]), pointSolid(3, [-2, 1, 0])]
    expect(compose([...solids, pointSolid(0, [100, 200, 300])])).toEqual(compose(solids))
  })

  test.each([
    ["no solids", []],
    ["solids without mass", [pointSolid(0, [2, 3, 5])]],
  ])("%s have no mass, their centre put at the origin, and no tensor", (_, solids) => {
    const { mass, centre, aboutCentre, aboutOrigin } = compose(solids)
    expect([mass, ...centre]).toEqual([0, 0, 0, 0])
    expectTensor(aboutCentre, aboutOrigin)
    expectTensor(aboutCentre, { xx: 0, yy: 0, zz: 0, xy: 0, xz: 0, yz: 0 })
  })

  test("the tensor about the centre keeps its digits however far away the origin is", () => {
    // A difference of tensors about the origin would leave about 1e-16 × 1e12 of a tensor of size 1.
    const far: Vec3 = [1e6, 2e6, 3e6]
    const whole = compose([pointSolid(1, [far[0] + 1, far[1], far[2]]), pointSolid(1, [far[0] - 1, far[1], far[2]])])
    expectTensor(whole.aboutCentre, { xx: 0, yy: 2, zz: 2, xy: 0, xz: 0, yz: 0 }, 1e-9)
  })
})

test("the tensor about any point exceeds the one about the centre by the parallel-axis term", () => {
  const solids = [tube(2, [3, 5, 7], [1, 0, 0], 4, 1, 0), slender(5, [0, 1, 2], [3, 2, 7])]
  const whole = compose(solids)
  const about: Vec3 = [11, -3, 2]
  const moved = tensorAbout([{ ...whole, aboutCentre: whole.aboutCentre }], about)
  expectTensor(tensorAbout(solids, about), moved)
})
