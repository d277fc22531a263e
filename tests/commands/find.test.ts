import { expect, test } from "vitest"
import { beforeTrying, changedSince, compareSetup, stillFits, trySetup } from "../../src/commands/find"
import { questionFor } from "../../src/scene/find"
import { readKit } from "../../src/scene/kit"
import { validateScene } from "../../src/scene/parse"
import { kitDocument } from "../scene/kit/kits"
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

test("kit and question count as changed by what they ask, not by a name or the order of keys", () => {
  const read = readKit(kitDocument())
  if (!read.ok) throw new Error("the kit is not valid")
  const kit = read.value
  const question = { ...questionFor(asked), target: { massMaxG: 3100, upMm: [-5, 7] as [number, number] } }
  const search = { scene: asked, kit, question }
  const unchanged = { bow: false, kit: false, question: false }
  expect(
    changedSince(search, { scene: { ...asked, rig: [...rig] }, kit: { ...kit, name: "another" }, question }),
  ).toEqual(unchanged)
  const swapped = { ...question, target: { upMm: [-5, 7] as [number, number], massMaxG: 3100, sideMm: undefined } }
  expect(changedSince(search, { scene: asked, kit, question: swapped })).toEqual(unchanged)
  const wider = { ...question, target: { ...question.target, massMaxG: 3200 } }
  const fuller = { ...kit, rods: kit.rods.map((each) => ({ ...each, count: each.count + 1 })) }
  const heavier = { ...asked, bow: { ...asked.bow, riser: { ...asked.bow.riser, massG: asked.bow.riser.massG + 100 } } }
  expect(changedSince(search, { scene: heavier, kit: fuller, question: wider })).toEqual({
    bow: true,
    kit: true,
    question: true,
  })
})

test("while a found rig is tried the bow suggests what it did before; any other rig speaks for itself", () => {
  const bench = benchWith(asked)
  const search = { scene: asked, question: { ...questionFor(asked), mounts: ["front" as const] } }
  expect(trySetup.run(bench, { ...found, name: "setup 3 tried" }).ok).toBe(true)
  expect(beforeTrying(search, [rig], sceneOn(bench)).rig).toEqual(asked.rig)
  expect(beforeTrying(search, [], sceneOn(bench))).toBe(sceneOn(bench))
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
