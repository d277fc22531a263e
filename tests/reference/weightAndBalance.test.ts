/**
 * Weight and balance as aircraft are loaded: the same sum of masses and moments, with published answers. In pounds
 * and inches as printed: a centre of mass does not ask for units.
 */
import { describe, expect, test } from "vitest"
import { compose, pointSolid, type Solid } from "../../src/core/solids"
import { expectNear } from "../core/near"

const at = (weight: number, station: number): Solid => pointSolid(weight, [station, 0, 0])
const station = (...solids: Solid[]) => compose(solids).centre[0]
/** A loaded aircraft of which `weight` at `from` is known, as the rest of it and that weight. */
function without(total: number, centre: number, weight: number, from: number): Solid {
  return at(total - weight, (total * centre - weight * from) / (total - weight))
}

describe("moving a weight", () => {
  test("100 lb from station 30 to 150 in an 8000 lb aircraft at 77.0: centre at 78.5 (FAA Pilot's Handbook, weight and balance, as reposted at flightlearnings.com, 2011)", () => {
    const rest = without(8000, 77, 100, 30)
    expectNear([station(rest, at(100, 30))], [77])
    expectNear([station(rest, at(100, 150))], [78.5])
  })

  test("65 lb from station 150 to 30 bring a 7800 lb aircraft from 81.5 to its aft limit 80.5 (FAA Pilot's Handbook, as quoted at jetcareers.com)", () => {
    const rest = without(7800, 81.5, 65, 150)
    expectNear([station(rest, at(65, 30))], [80.5])
  })

  test("0.200 kg moved by 0.150 m in a 3.000 kg bow moves the balance point 10.0 mm (derived: m/M = shift/distance, as in the same handbook)", () => {
    const before = station(at(2.8, 0.04), at(0.2, 0.5))
    expectNear([station(at(2.8, 0.04), at(0.2, 0.65)) - before], [0.01], 1e-12)
  })
})

describe("adding a weight", () => {
  test("207.14 lb at station 130 take a 2900 lb aircraft from 115.0 to 116.0 (FAA-type examination item, jetcareers.com)", () => {
    // Printed to a hundredth of a pound, which moves the centre by less than 5e-5.
    expect(Math.abs(station(at(2900, 115), at(207.14, 130)) - 116)).toBeLessThan(5e-5)
    expectNear([station(at(2900, 115), at(2900 / 14, 130))], [116])
  })
})

test("100, 100 and 200 lb at 50, 90 and 150 in on a board: 400 lb, 44 000 in·lb, centre 110 (arithmetic; that it is the board of FAA-H-8083-1, chapter 2, is from memory)", () => {
  const { mass, centre } = compose([at(100, 50), at(100, 90), at(200, 150)])
  expectNear([mass, mass * centre[0], centre[0]], [400, 44_000, 110])
})
