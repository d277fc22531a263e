import { expect, test } from "vitest"
import { hangWeight } from "../../src/commands/hang"
import { applyHang, flattestHang, swingMotions } from "../../src/scene/hills"
import type { PartOf } from "../../src/scene/schema"
import { valueAt } from "../../src/scene/address"
import { createBench } from "../../src/state/bench"
import { hungDocument, sceneOf } from "../scene/scenes"

const scene = sceneOf(hungDocument())
const moved = swingMotions(scene).find(({ path }) => path === "back/swing")!
const found = flattestHang(scene, {
  swing: valueAt(scene, moved.address) as PartOf<"swing">,
  moving: [moved.address],
  ranges: { stemLengthMm: { from: 70, to: 130, step: 30 }, bobMassG: { from: 50, to: 110, step: 20 } },
})
if (!found.ok) throw new Error(found.errors[0]?.message)
const answer = found.value.best[0]!

test("an answer is tried as one undo step and gives the flatness it promised", () => {
  const bench = createBench(scene)
  expect(hangWeight.run(bench, { asked: scene, answer, name: "back mount" }).ok).toBe(true)
  expect(bench.store.getState().scene.rig).toEqual(applyHang(scene, answer).rig)
  expect(bench.store.getState().history.past).toHaveLength(1)
  bench.undo()
  expect(bench.store.getState().scene).toEqual(scene)
})

test("an answer is tried as well on a bow that is held another way since, and the pose stays", () => {
  const bench = createBench(scene)
  const pose = { ...scene.pose, slopeDeg: -20, cantDeg: 3, draw: 0.5 }
  bench.change("held another way", (draft) => {
    draft.pose = pose
  })
  expect(hangWeight.run(bench, { asked: scene, answer, name: "back mount" }).ok).toBe(true)
  expect(bench.store.getState().scene.rig).toEqual(applyHang(scene, answer).rig)
  expect(bench.store.getState().scene.pose).toEqual(pose)
})

test("an answer for a bow that has changed since is refused and changes nothing", () => {
  const bench = createBench(scene)
  bench.change("renamed", (draft) => {
    draft.name = "another"
  })
  const before = bench.store.getState().scene
  const result = hangWeight.run(bench, { asked: scene, answer, name: "back mount" })
  expect(result.ok).toBe(false)
  expect(bench.store.getState().scene).toBe(before)
})
