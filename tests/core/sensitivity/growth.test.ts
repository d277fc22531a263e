import { describe, expect, it } from "vitest"
import {
  boxEdgeRates,
  gyrationRates,
  lineRates,
  type MovingPoint,
  movedRates,
  slenderRates,
  sumMoments,
  tubeLengthRates,
  tubeRadiusRates,
} from "../../../src/core/sensitivity"
import { along, box, distance, gyrating, slender, tube, unit, type Vec3, ZERO } from "../../../src/core/solids"
import { expectRate, expectSame, momentsOfAll } from "./differences"

const start: Vec3 = [0.3, -0.2, 0.5]
const d = unit([2, 3, -5])
const mass = 0.7

describe("growth of a tube", () => {
  it("lengthens it about an unmoved centre", () => {
    expectRate(tubeLengthRates(mass, 0.6, d), (h) => [tube(mass, along(start, d, -h / 2), d, 0.6 + h, 0.05, 0.03)])
  })

  it("widens it at either radius", () => {
    expectRate(tubeRadiusRates(mass, 0.05, d), (h) => [tube(mass, start, d, 0.6, 0.05 + h, 0.03)])
    expectRate(tubeRadiusRates(mass, 0.03, d), (h) => [tube(mass, start, d, 0.6, 0.05, 0.03 + h)])
  })
})

describe("growth of a body", () => {
  it.each([0, 1, 2])("follows each edge of a box and each radius of gyration, axis %i", (axis) => {
    const longer = (r: Vec3, h: number) => r.map((value, i) => (i === axis ? value + h : value)) as unknown as Vec3
    const size: Vec3 = [0.2, 0.3, 0.5]
    expectRate(boxEdgeRates(mass, size[axis] as number, axis), (h) => [box(mass, start, longer(size, h))])
    expectRate(gyrationRates(mass, size[axis] as number, axis), (h) => [gyrating(mass, start, longer(size, h))])
  })
})

const a: MovingPoint = { at: start, rate: [2, -3, 5] }
const b: MovingPoint = { at: [-0.7, 0.2, 0.3], rate: [-3, 7, 2] }
const c: MovingPoint = { at: [0.2, 0.5, -0.3], rate: [5, 2, -7] }
const later = (point: MovingPoint, h: number): Vec3 => along(point.at, point.rate, h)

describe("slenderRates", () => {
  it("follows both ends and the mass of a slender rod at once", () => {
    expectRate(slenderRates(mass, 3, a, b), (h) => [slender(mass + 3 * h, later(a, h), later(b, h))])
  })

  it("moves a rod whose ends coincide as the point mass it is", () => {
    const point: MovingPoint = { at: start, rate: a.rate }
    expectSame(slenderRates(mass, 0, point, point), movedRates(momentsOfAll([slender(mass, start, start)]), a.rate))
  })
})

describe("lineRates", () => {
  it("keeps a string's mass spread evenly while its points move", () => {
    const string = (h: number) => {
      const points = [later(a, h), later(b, h), later(c, h)] as const
      const [first, second] = [distance(points[0], points[1]), distance(points[1], points[2])]
      const total = mass + 2 * h
      return [
        slender((total * first) / (first + second), points[0], points[1]),
        slender((total * second) / (first + second), points[1], points[2]),
      ]
    }
    expectRate(sumMoments(...lineRates(mass, 2, [a, b, c])), string)
  })

  it("lets a piece of no length grow at the speed at which its ends part", () => {
    const still: MovingPoint = { at: a.at, rate: ZERO }
    const [piece] = lineRates(mass, 0, [still, a, { at: b.at, rate: ZERO }])
    const parting = Math.hypot(...a.rate)
    expect(piece?.mass).toBeCloseTo((mass * parting) / distance(a.at, b.at), 12)
  })
})
