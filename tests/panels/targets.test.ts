import { expect, test } from "vitest"
import { firstTarget, switchTarget } from "../../src/panels/bow/targets"
import { targetKeys, targetStates } from "../../src/scene/suggest"
import { newScene } from "../../src/scene/templates"
import { benchWith } from "../state/benches"

const bare = () => benchWith({ ...newScene(), target: {} })

test("a target about the balance point or the mass begins around where the bow is, and so is met", () => {
  const bench = bare()
  for (const key of targetKeys) expect(switchTarget(bench, key).ok).toBe(true)
  const { scene, evaluation } = bench.store.getState()
  const met = targetStates(scene, evaluation).filter(({ missedBy }) => missedBy === 0)
  expect(met.map(({ key }) => key)).toEqual(expect.arrayContaining(["forwardMm", "upMm", "sideMm", "massMaxG"]))
})

test("ranges begin on numbers one can read", () => {
  const { evaluation } = bare().store.getState()
  const { forwardMm } = firstTarget("forwardMm", evaluation)
  expect(forwardMm?.map((end) => end % 5)).toEqual([0, 0].map((zero) => expect.closeTo(zero, 9)))
  expect(forwardMm![1] - forwardMm![0]).toBe(40)
  expect(firstTarget("netLiftNm", evaluation)).toEqual({ netLiftNm: [-0.5, 0.5] })
})

test("switching a target off is one undo step that brings its range back", () => {
  const bench = benchWith(newScene())
  expect(switchTarget(bench, "forwardMm").ok).toBe(true)
  expect(bench.store.getState().scene.target.forwardMm).toBeUndefined()
  bench.undo()
  expect(bench.store.getState().scene.target.forwardMm).toEqual([40, 80])
})
