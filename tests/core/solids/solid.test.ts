import { describe, expect, test } from "vitest"
import { box, gyrating, gyrationPossible, pointSolid, slender, tube, type Vec3 } from "../../../src/core/solids"
import { expectNear, expectTensor, members } from "../near"

const at: Vec3 = [2, 3, 5]

test("a point has no tensor about itself", () => {
  expect(pointSolid(7, at)).toEqual({ mass: 7, centre: at, aboutCentre: { xx: 0, yy: 0, zz: 0, xy: 0, xz: 0, yz: 0 } })
})

test("a box resists a turn about an edge direction by the two other edges", () => {
  const { mass, centre, aboutCentre } = box(12, at, [2, 3, 5])
  expect([mass, centre]).toEqual([12, at])
  expectTensor(aboutCentre, { xx: 9 + 25, yy: 4 + 25, zz: 4 + 9, xy: 0, xz: 0, yz: 0 })
})

describe("a tube", () => {
  test("along an axis has mr²/2-like and transverse moments about its middle", () => {
    const { centre, aboutCentre } = tube(24, at, [0, 1, 0], 6, 3, 2)
    expect(centre).toEqual([2, 6, 5])
    const transverse = (24 * (3 * (9 + 4) + 36)) / 12
    expectTensor(aboutCentre, { xx: transverse, yy: (24 * (9 + 4)) / 2, zz: transverse, xy: 0, xz: 0, yz: 0 })
  })

  test("of inner radius 0 is a full cylinder", () => {
    const { aboutCentre } = tube(2, at, [1, 0, 0], 7, 3, 0)
    expectNear([aboutCentre.xx, aboutCentre.yy, aboutCentre.zz], [9, (2 * (27 + 49)) / 12, (2 * (27 + 49)) / 12])
  })

  test("of length 0 is a disc", () => {
    const { centre, aboutCentre } = tube(4, at, [0, 0, 1], 0, 3, 0)
    expect(centre).toEqual(at)
    expectNear([aboutCentre.xx, aboutCentre.yy, aboutCentre.zz], [9, 9, 18])
  })

  test("of no mass weighs and resists nothing", () => {
    const { mass, aboutCentre } = tube(0, at, [0, 0, 1], 7, 3, 2)
    expect(mass).toBe(0)
    expect(members(aboutCentre).every((member) => member === 0)).toBe(true)
  })

  test("askew keeps its moments about its own axes: the trace stays, the axial moment lies along it", () => {
    const d: Vec3 = [2 / 7, 3 / 7, -6 / 7]
    const { centre, aboutCentre: t } = tube(5, at, d, 14, 3, 2)
    expectNear([...centre], [4, 6, -1])
    const axial = (5 * 13) / 2
    const transverse = (5 * (39 + 196)) / 12
    expectNear([t.xx + t.yy + t.zz], [axial + 2 * transverse])
    const along = [
      t.xx * d[0] + t.xy * d[1] + t.xz * d[2],
      t.xy * d[0] + t.yy * d[1] + t.yz * d[2],
      t.xz * d[0] + t.yz * d[1] + t.zz * d[2],
    ]
    expectNear(along, [axial * d[0], axial * d[1], axial * d[2]])
  })
})

describe("a slender rod", () => {
  test("resists across itself with mL²/12 and along itself not at all", () => {
    const { mass, centre, aboutCentre } = slender(3, [2, 5, 7], [8, 5, 7])
    expect([mass, centre]).toEqual([3, [5, 5, 7]])
    expectTensor(aboutCentre, { xx: 0, yy: 9, zz: 9, xy: 0, xz: 0, yz: 0 })
  })

  test("between coinciding ends is a point", () => {
    expect(slender(3, at, at)).toEqual(pointSolid(3, at))
  })

  test("does not care which end comes first", () => {
    const [one, other] = [slender(3, at, [7, 1, -2]), slender(3, [7, 1, -2], at)]
    expect(one.centre).toEqual(other.centre)
    expectTensor(one.aboutCentre, other.aboutCentre)
  })
})

test("a body given by radii of gyration takes them as roll, yaw, pitch", () => {
  const { aboutCentre } = gyrating(2, at, [3, 5, 7])
  expectTensor(aboutCentre, { xx: 18, yy: 50, zz: 98, xy: 0, xz: 0, yz: 0 })
})

describe("radii of gyration", () => {
  test.each<[Vec3, boolean]>([
    [[3, 4, 5], true],
    [[5, 3, 4], true],
    [[4, 5, 3], true],
    [[3, 4, 5.001], false],
    [[5.001, 3, 4], false],
    [[4, 5.001, 3], false],
    [[0, 0, 0], true],
    [[0, 7, 7], true],
    [[0, 7, 7.1], false],
    [[7, 7, 0], true],
  ])("%j: a body can have them: %s", (radii, possible) => {
    expect(gyrationPossible(radii)).toBe(possible)
  })
})
