import { expect, test } from "vitest"
import { fullDraw } from "../../../src/scene/evaluate"
import { slopeComparison } from "../../../src/scene/hills"
import { withoutSwings } from "../../../src/scene/hills/place"
import { validateScene } from "../../../src/scene/parse"
import type { Scene } from "../../../src/scene/schema"
import { discs, extender, fullDocument, rigged, rod, swing, vbar, arm } from "../documents"

/** The two ways of summing differ by rounding only, N·m. */
const ROUNDING = 1e-12

const sceneOf = (document: unknown): Scene => {
  const read = validateScene(document)
  if (!read.ok) throw new Error(JSON.stringify(read.errors))
  return read.value
}

const compared = (scene: Scene, step?: 1 | 5) => {
  const made = slopeComparison(scene, step)
  if (!made.ok) throw new Error(JSON.stringify(made.errors))
  return made.value
}

const netLift = (scene: Scene, slopeDeg: number): number => {
  const drawn = fullDraw(scene, slopeDeg)
  if (!drawn.ok) throw new Error(JSON.stringify(drawn.errors))
  return drawn.value.netLift
}

const hangers = rigged({
  front: [
    extender(),
    vbar({ left: arm(35, 12, [rod({ massG: 57, lengthMm: 253 }), swing({ joint: "ball", stopDeg: 20 })]) }),
    rod(),
    discs(),
  ],
  lower: [swing({ stopDeg: 17, stemLengthMm: 90 })],
  back: [extender({ lengthMm: 41 }), swing()],
})

test.each([
  ["everything", fullDocument()],
  ["three swing weights, two of which reach their stops", hangers],
])("for a bow with %s each point is the full draw on that slope", (_, document) => {
  const scene = sceneOf(document)
  const { slopesDeg, free, lift } = compared(scene)
  expect(slopesDeg).toHaveLength(91)
  slopesDeg.forEach((slopeDeg, index) => {
    expect(Math.abs(free.netLift[index]! - netLift(scene, slopeDeg))).toBeLessThanOrEqual(ROUNDING)
  })
  const level = fullDraw(scene, 0)
  expect(level.ok && level.value.lift).toBe(lift)
})

const SWINGS = [
  ["rig", 0, "chain", 1, "left", "chain", 1],
  ["rig", 1, "chain", 0],
  ["rig", 2, "chain", 1],
]

test("without means the scene with its swing weights taken off", () => {
  const scene = sceneOf(hangers)
  const bare = withoutSwings(scene, SWINGS)
  const { slopesDeg, without, hasSwing } = compared(scene)
  expect(hasSwing).toBe(true)
  slopesDeg.forEach((slopeDeg, index) => {
    expect(Math.abs(without.netLift[index]! - netLift(bare, slopeDeg))).toBeLessThanOrEqual(ROUNDING)
  })
  const again = compared(bare)
  expect(again.hasSwing).toBe(false)
  expect(again.free).toEqual(again.without)
  expect(again.locked).toEqual(again.without)
})

test("locked means hanging as on the level, which a stop of zero does too", () => {
  const scene = sceneOf(hangers)
  const stopped = JSON.parse(JSON.stringify(hangers).replace(/"stopDeg":\d+/g, '"stopDeg":0'))
  const fixed = sceneOf(stopped)
  const { slopesDeg, locked, free } = compared(scene)
  slopesDeg.forEach((slopeDeg, index) => {
    expect(Math.abs(locked.netLift[index]! - netLift(fixed, slopeDeg))).toBeLessThanOrEqual(ROUNDING)
  })
  const level = slopesDeg.indexOf(0)
  expect(locked.netLift[level]).toBe(free.netLift[level])
})

test("a hanging weight makes the bow less heavy in front uphill than a locked one does", () => {
  const { slopesDeg, free, locked } = compared(sceneOf(hangers))
  const up = slopesDeg.indexOf(25)
  const down = slopesDeg.indexOf(-25)
  expect(free.netLift[up]).toBeGreaterThan(locked.netLift[up]!)
  expect(free.netLift[down]).toBeLessThan(locked.netLift[down]!)
})

test("every five degrees shows every fifth point and judges flatness alike", () => {
  const scene = sceneOf(hangers)
  const fine = compared(scene)
  const coarse = compared(scene, 5)
  expect(coarse.slopesDeg).toEqual(Array.from({ length: 19 }, (_, index) => index * 5 - 45))
  expect(coarse.free.netLift).toEqual(fine.free.netLift.filter((_, index) => index % 5 === 0))
  expect(coarse.free.flatness).toBe(fine.free.flatness)
})

test("flatness is the spread of net lift from 30° down to 30° up, and looks no further", () => {
  const scene = sceneOf(hangers)
  const { slopesDeg, free, locked, without } = compared(scene)
  for (const { netLift: all, flatness } of [free, locked, without]) {
    const within = all.filter((_, index) => Math.abs(slopesDeg[index]!) <= 30)
    expect(within).toHaveLength(61)
    expect(flatness).toBe(Math.max(...within) - Math.min(...within))
    expect(flatness).toBeLessThan(Math.max(...all) - Math.min(...all))
  }
})
