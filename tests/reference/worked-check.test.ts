/**
 * A whole scene against figures from an independent program that sums point masses and uses no inertia formula
 * (worked-check/expected.json, which says so itself). The scene is invented; it exercises a canted, raised compound
 * with one V-bar arm and a hinged swing weight.
 */
import { readFileSync } from "node:fs"
import { join } from "node:path"
import { expect, test } from "vitest"
import { parseScene } from "../../src/scene/parse"
import { reportOf } from "../../src/scene/sweeps"

const folder = join(import.meta.dirname, "worked-check")
const text = (name: string) => readFileSync(join(folder, name), "utf8")
const expected = JSON.parse(text("expected.json"))

const scene = parseScene(text("scene.json"))
if (!scene.ok) throw new Error(JSON.stringify(scene.errors))
const made = reportOf(scene.value)
if (!made.ok) throw new Error(JSON.stringify(made.errors))
const { report } = made.value

/** Agreement asked for, relative to each quantity's natural scale. */
const RELATIVE = 1e-6
const INERTIA = Math.max(...expected.atPose.principal) // kg·m²
const LENGTH = 100 // mm
const MOMENT = 1 // N·m
const FORCE = 100 // N
const MASS = 1000 // g

const near = (actual: unknown, wanted: unknown, scale: number) => {
  const [a, b] = [[actual].flat(2) as number[], [wanted].flat(2) as number[]]
  expect(a).toHaveLength(b.length)
  a.forEach((value, index) => {
    expect(Math.abs(value - b[index]!), `${value} against ${b[index]}`).toBeLessThanOrEqual(RELATIVE * scale)
  })
}

const atPose: [keyof typeof report, number][] = [
  ["massG", MASS],
  ["centreMm", LENGTH],
  ["inertiaGrip", INERTIA],
  ["inertiaCentre", INERTIA],
  ["principal", INERTIA],
  ["armForwardMm", LENGTH],
  ["armSideMm", LENGTH],
  ["noseDownNm", MOMENT],
  ["cantRightNm", MOMENT],
  ["holdForceN", FORCE],
  ["pitchInertiaFree", INERTIA],
]

test.each(atPose)("at its pose, %s agrees with the sum of point masses", (key, scale) => {
  near(report[key], expected.atPose[key], scale)
})

test("the fixture's every figure at the pose is compared", () => {
  expect(Object.keys(expected.atPose).sort()).toEqual([...atPose.map(([key]) => key), "parts"].sort())
})

test("every part stands in the file's order with its mass and centre", () => {
  expect(report.parts.map((part) => part.path)).toEqual(
    expected.atPose.parts.map((part: { path: string }) => part.path),
  )
  report.parts.forEach((part, index) => {
    near(part.massG, expected.atPose.parts[index].massG, MASS)
    near(part.centreMm, expected.atPose.parts[index].centreMm, LENGTH)
  })
})

const atFullDraw: [keyof typeof report.fullDraw, number][] = [
  ["holdForceN", FORCE],
  ["liftNm", MOMENT],
  ["noseDownNm", MOMENT],
  ["netLiftNm", MOMENT],
  ["balancedForwardMm", LENGTH],
  ["gripShiftMm", LENGTH],
  ["centreMm", LENGTH],
  ["massG", MASS],
]

test.each(atFullDraw)("level at full draw, %s agrees", (key, scale) => {
  near(report.fullDraw[key], expected.fullDraw[key], scale)
})

test("the fixture's every figure at full draw is compared", () => {
  expect(Object.keys(expected.fullDraw).sort()).toEqual(atFullDraw.map(([key]) => key).sort())
})

test.each(Object.entries(expected.noseDownNmAtFullDrawBySlopeDeg as Record<string, number>))(
  "at full draw on a slope of %s°, the nose-down moment agrees",
  (slope, noseDown) => {
    const row = report.slopes.find((each) => each.slopeDeg === Number(slope))
    near(row?.noseDownNm, noseDown, MOMENT)
    near(row?.netLiftNm, expected.fullDraw.liftNm - noseDown, MOMENT)
  },
)
