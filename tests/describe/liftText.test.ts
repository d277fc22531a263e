import { expect, test } from "vitest"
import { drawnBalance } from "../../src/core/balance"
import { elbowText, liftChange, liftSlopes, nockText } from "../../src/describe/liftText"
import { recurveBow, smallestDocument } from "../scene/documents"
import { evaluationOf, sceneOf } from "../picture/pictures"

const metric = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const
const imperial = { massUnit: "oz", lengthUnit: "in", forceUnit: "lbf" } as const

test("the slopes of the lift are those of small changes of elbow and nock", () => {
  const hold = { force: 170, nockHeight: 0.05, draw: 0.66, elbow: 0.07 }
  const lift = (nockHeight: number, elbowElevation: number) =>
    drawnBalance({ holdForce: 170, nockHeight, drawLength: 0.66, elbowElevation, mass: 2, noseDown: 3 }).lift
  const degree = Math.PI / 180
  const slopes = liftSlopes(hold)
  expect(slopes.perDegree).toBeCloseTo((lift(0.05, 0.07 + degree / 100) - lift(0.05, 0.07 - degree / 100)) * 50, 5)
  expect(slopes.perMillimetre).toBeCloseTo(lift(0.051, 0.07) - lift(0.05, 0.07), 9)
})

test("a higher elbow is said to lower the lift and a higher nock to raise it, by what evaluating again gives", () => {
  const document = { ...smallestDocument(), bow: recurveBow() }
  const scene = sceneOf(document)
  const here = evaluationOf(scene)
  const { lift } = here.fullDraw
  const elbow = scene.archer.elbowElevationDeg
  const raised = evaluationOf(sceneOf({ ...document, archer: { elbowElevationDeg: elbow + 0.1 } })).fullDraw.lift
  const nock = { ...recurveBow(), nockHeightMm: scene.bow.nockHeightMm + 1 }
  const higher = evaluationOf(sceneOf({ ...document, bow: nock })).fullDraw.lift
  expect(elbowText(here, metric)).toBe(
    `Each degree higher lowers the lift by ${((lift - raised) * 10).toFixed(2)}\u00a0N·m.`,
  )
  expect(nockText(here, metric)).toBe(
    `Each millimetre higher raises the lift by ${(higher - lift).toFixed(2)}\u00a0N·m.`,
  )
  expect(nockText(here, imperial)).toMatch(/^Each tenth of an inch higher raises the lift by \d+\.\d\d\u00a0lbf·in\.$/)
})

test("a change of the lift is said with its sign, and none as none", () => {
  expect(liftChange(0.123, metric)).toBe("lift +0.12\u00a0N·m")
  expect(liftChange(-2.05, metric)).toBe("lift \u22122.05\u00a0N·m")
  expect(liftChange(-0.004, metric)).toBe("lift unchanged")
  expect(liftChange(0.5, imperial)).toBe("lift +4.43\u00a0lbf·in")
})
