import { expect, test } from "vitest"
import { searchWhole } from "../../../src/core/find"
import { missOfLimit, questionFor, setupSpace } from "../../../src/scene/find"
import { readKit } from "../../../src/scene/kit"
import { validateScene } from "../../../src/scene/parse"
import { evaluate } from "../../../src/scene/evaluate"
import { discs, rigged, rod } from "../documents"
import { kitDocument } from "../kit/kits"

const needed = <T>(result: { ok: true; value: T } | { ok: false }) => {
  if (!result.ok) throw new Error(JSON.stringify(result))
  return result.value
}
const bow = needed(validateScene(rigged({ front: [rod(), discs()] })))
const kit = needed(readKit(kitDocument()))

async function missed(target: ReturnType<typeof questionFor>["target"]) {
  const space = needed(
    setupSpace(bow, kit, { ...questionFor(bow), always: { frontRod: false, vbar: false }, mostDiscs: 3, target }),
  )
  const search = async (problem: Parameters<typeof searchWhole>[0]) => searchWhole(problem)
  const misses = await Promise.all(space.limitKeys.map((_, index) => missOfLimit(space, index, search)))
  return { none: searchWhole(space.problem).found.length === 0, misses }
}

test("a limit out of the kit's reach is missed by itself; what comes nearest to it weighs what is said", async () => {
  const { none, misses } = await missed({ forwardMm: [900, 920], massMaxG: 3900 })
  expect(none).toBe(true)
  const [forward, mass] = misses
  expect(forward?.key).toBe("forwardMm")
  expect(forward?.nearest?.by).toBeCloseTo(900 - forward!.nearest!.value, 9)
  expect(forward?.alone?.by).toBeGreaterThan(100)
  const { now } = needed(evaluate({ ...bow, rig: [...forward!.nearest!.setup.rig] }))
  expect(now.centre[0] * 1e3).toBeCloseTo(forward!.nearest!.value, 9)
  // With the forward limit kept nothing is left, so the mass is not what binds; alone it is easily met.
  expect(mass).toEqual({ key: "massMaxG", nearest: null, alone: expect.objectContaining({ by: 0 }) })
})

test("two limits that exclude each other each name what the other leaves possible", async () => {
  const { none, misses } = await missed({ pitchLeast: 0.3, massMaxG: 2450 })
  expect(none).toBe(true)
  const [mass, pitch] = misses
  expect([mass?.key, pitch?.key]).toEqual(["massMaxG", "pitchLeast"])
  for (const miss of misses) {
    expect(miss.alone?.by).toBe(0)
    expect(miss.nearest?.by).toBeGreaterThan(0)
  }
  expect(mass?.nearest?.by).toBeCloseTo(mass!.nearest!.value - 2450, 9)
  expect(pitch?.nearest?.by).toBeCloseTo(0.3 - pitch!.nearest!.value, 9)
})
