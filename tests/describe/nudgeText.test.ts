import { expect, test } from "vitest"
import type { Vec3 } from "../../src/core/solids"
import type { UnitChoice } from "../../src/describe/format"
import {
  enlargedText,
  faceText,
  holdText,
  landingText,
  noStringText,
  nudgeCsv,
  othersPointText,
  turnPointText,
  turnText,
} from "../../src/describe/nudgeText"

const metric: UnitChoice = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" }
const inches: UnitChoice = { ...metric, lengthUnit: "in" }
const DEGREE = Math.PI / 180
const turned: Vec3 = [0.002 * DEGREE, 0.043 * DEGREE, -0.031 * DEGREE]
const more: Vec3 = [-0.007 * DEGREE, 0.051 * DEGREE, 0]

test("a turn says how far and which way its front or top went", () => {
  expect(turnText(0.043 * DEGREE, "yaw")).toBe("0.043° left")
  expect(turnText(-0.043 * DEGREE, "yaw")).toBe("0.043° right")
  expect(turnText(0.5 * DEGREE, "pitch")).toBe("0.500° up")
  expect(turnText(-12.34 * DEGREE, "pitch", 1)).toBe("12.3° down")
  expect(turnText(0.007 * DEGREE, "roll")).toBe("0.007° right")
  expect(turnText(-1e-9, "roll")).toBe("0.000°")
})

test("one moment of a plot is said for every bow, with the motion asked for or with all others", () => {
  const bows = [["this bow", turned] as const, ["held", more] as const]
  expect(turnPointText(0.016, "yaw", bows)).toBe("16\u00a0ms: this bow 0.043° left; held 0.051° left.")
  expect(othersPointText(0.016, "yaw", bows)).toBe(
    "16\u00a0ms: this bow roll 0.002° right, pitch 0.031° down; held roll 0.007° left, pitch 0.000°.",
  )
})

test("an arrow's place is said to the millimetre or the tenth of an inch, and a hit on the aim as such", () => {
  expect(landingText({ right: -0.1062, up: 0.0034 }, metric)).toBe("106\u00a0mm left, 3\u00a0mm high")
  expect(landingText({ right: 0.1062, up: -0.0034 }, inches)).toBe("4.2\u00a0in right, 0.1\u00a0in low")
  expect(landingText({ right: 0.0004, up: -0.0002 }, metric)).toBe("on the aim")
})

test("a hold says its stiffness against each motion, its damping, and what share of critical that is", () => {
  const tensor = { xx: 0.1, yy: 0.2, zz: 0.4, xy: 0, xz: 0, yz: 0 }
  // Critical in pitch: 2·√(250·0.4) = 20 N·m·s/rad.
  expect(holdText({ pitch: 250, yaw: 250, roll: 0, damping: 3 }, tensor)).toBe(
    "Stiffness 250\u00a0N·m/rad against pitch and yaw, none against roll; damping 3.00\u00a0N·m·s/rad, 15\u00a0% of critical in pitch.",
  )
  expect(holdText({ pitch: 0, yaw: 5, roll: 2.5, damping: 0 }, tensor)).toBe(
    "Stiffness none against pitch, 5.0\u00a0N·m/rad against yaw, 2.5\u00a0N·m/rad against roll; damping none.",
  )
})

test("a hold that is not offered is explained by the setups that have none", () => {
  expect(noStringText(["A"])).toMatch(/^“String held” is not offered: “A” is a compound, whose cables are not modelled/)
  expect(noStringText(["A", "B"])).toContain("“A” and “B” are compounds, whose")
})

test("what is drawn larger than it is says so", () => {
  expect(enlargedText(1, 2)).toBe("Drawn as far as it turns.")
  expect(enlargedText(50, 2)).toBe("Drawn turning 50 times as far as it does, both bows alike.")
  expect(enlargedText(50, 1)).toBe("Drawn turning 50 times as far as it does.")
  expect(faceText(122, 1)).toBe("Ten rings on 122\u00a0cm, the size that is usual at this distance.")
  expect(faceText(40, 8)).toContain("seen 8 times nearer")
})

test("a table has the time and every motion of every bow in degrees", () => {
  const trace = { step: 0.001, angles: [[0, 0, 0] as const, turned], rates: [] }
  const [heading, , second] = nudgeCsv([
    { name: "this bow", trace },
    { name: "held", trace },
  ]).split("\r\n")
  expect(heading).toBe(
    "time s,this bow roll deg,this bow yaw deg,this bow pitch deg,held roll deg,held yaw deg,held pitch deg",
  )
  const numbers = second!.split(",").map(Number)
  expect(numbers).toEqual([0.001, 0.002, 0.043, -0.031, 0.002, 0.043, -0.031].map((value) => expect.closeTo(value, 12)))
})
