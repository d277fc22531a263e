import { expect, test } from "vitest"
import { compareSetup, stillFits, trySetup } from "../../src/commands/find"
import { validateScene } from "../../src/scene/parse"
import { discs, extender, rigged, rod } from "../scene/documents"
import { beside } from "../../src/state/compared"
import { benchWith, sceneOn, stepsOn } from "../state/benches"

const sceneOf = (chains: Parameters<typeof rigged>[0]) => {
  const scene = validateScene(rigged(chains))
  if (!scene.ok) throw new Error(JSON.stringify(scene.errors))
  return scene.value
}
const asked = sceneOf({ front: [rod(), discs()], lower: [discs({ count: 2 })] })
const { rig } = sceneOf({ front: [extender(), rod({ lengthMm: 650 })], lower: [discs({ count: 2 })] })
const found = { asked, mounts: ["front" as const], rig }

test("a found rig is tried as one undo step, and the comparison with it ends", () => {
  const bench = benchWith(asked)
  expect(compareSetup.run(bench, found).ok).toBe(true)
  expect(trySetup.run(bench, { ...found, name: "setup 3 tried" }).ok).toBe(true)
  expect(sceneOn(bench).rig).toEqual(rig)
  expect(stepsOn(bench)).toEqual(["setup 3 tried"])
  expect(bench.store.getState().peeked).toBeNull()
  bench.undo()
  expect(sceneOn(bench)).toEqual(asked)
})

test("it still fits when only what was built anew has changed, and is refused on another bow", () => {
  const bench = benchWith(asked)
  bench.change("another rig", (draft) => {
    draft.rig[0]!.chain.pop()
    draft.name = "renamed"
  })
  expect(stillFits(found, sceneOn(bench))).toBe(true)
  bench.change("another stack below", (draft) => {
    draft.rig[1]!.chain.pop()
  })
  expect(stillFits(found, sceneOn(bench))).toBe(false)
  bench.undo()
  bench.change("another riser", (draft) => {
    draft.bow.riser.massG += 100
  })
  const before = sceneOn(bench)
  const refused = trySetup.run(bench, { ...found, name: "setup 2 tried" })
  expect(refused.ok ? [] : refused.errors).toEqual([
    { code: "not-allowed", path: "", message: "the bow has changed since the search; search again" },
  ])
  expect(sceneOn(bench)).toBe(before)
})

test("a comparison is held as the bow is, changes nothing of it, and goes again", () => {
  const bench = benchWith({ ...asked, pose: { draw: 0, slopeDeg: 13, cantDeg: -3 } })
  compareSetup.run(bench, found)
  const state = bench.store.getState()
  const shown = beside(state)
  expect(shown?.scene.rig).toEqual(rig)
  expect(shown?.evaluation.now.pose).toEqual({ draw: 0, slopeDeg: 13, cantDeg: -3 })
  expect(state.scene.rig).toEqual(asked.rig)
  compareSetup.run(bench, null)
  expect(beside(bench.store.getState())).toBeNull()
})
