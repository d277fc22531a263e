import { expect, test } from "vitest"
import { compareWith, holdToCompare, peek, stopComparing, swapCompared } from "../../src/commands/compare"
import { setNumber } from "../../src/commands/numbers"
import { newScene } from "../../src/scene/templates"
import { beside } from "../../src/state/compared"
import { DONE, fullBench, fullScene, numberOn, sceneOn, stepsOn } from "../state/benches"

const shown = (bench: ReturnType<typeof fullBench>) => beside(bench.store.getState())

test("a held setup stays as it was while the one on the bench changes, and is no undo step", () => {
  const bench = fullBench()
  holdToCompare.run(bench, undefined)
  const before = shown(bench)!.figures.massG
  setNumber.run(bench, { key: "front/rod:massG", value: 337 })
  expect(shown(bench)!.figures.massG).toBe(before)
  expect(shown(bench)!.name).toBe(fullScene().name)
  expect(stepsOn(bench)).toHaveLength(1)
})

test("the held setup is posed as the one on the bench, and worked out once for a pose", () => {
  const bench = fullBench()
  holdToCompare.run(bench, undefined)
  setNumber.run(bench, { key: "pose:slopeDeg", value: 23 })
  const first = shown(bench)!
  expect(first.evaluation.now.pose.slopeDeg).toBe(23)
  setNumber.run(bench, { key: "front/rod:massG", value: 337 })
  expect(shown(bench)).toBe(first)
})

test("swapping puts the held setup on the bench in one undo step and holds the other", () => {
  const bench = fullBench()
  holdToCompare.run(bench, undefined)
  setNumber.run(bench, { key: "front/rod:massG", value: 337 })
  const changed = sceneOn(bench)
  expect(swapCompared.run(bench, undefined)).toEqual(DONE)
  expect(sceneOn(bench)).toEqual(fullScene())
  expect(bench.store.getState().compared?.scene).toEqual(changed)
  bench.undo()
  expect(numberOn(bench, "front/rod:massG")).toBe(337)
})

test("swapping keeps the pose, so that the two are seen held alike", () => {
  const bench = fullBench()
  holdToCompare.run(bench, undefined)
  setNumber.run(bench, { key: "pose:slopeDeg", value: 23 })
  swapCompared.run(bench, undefined)
  expect(numberOn(bench, "pose:slopeDeg")).toBe(23)
})

test("without a held setup there is nothing to swap or to stop", () => {
  const bench = fullBench()
  expect(swapCompared.enabled?.(bench.store.getState())).toBe(false)
  expect(stopComparing.enabled?.(bench.store.getState())).toBe(false)
  expect(swapCompared.run(bench, undefined)).toEqual(DONE)
  expect(sceneOn(bench)).toEqual(fullScene())
})

test("a setup looked at in a list is shown before the held one, until it is looked at no longer", () => {
  const bench = fullBench()
  compareWith.run(bench, { name: "held", scene: fullScene() })
  peek.run(bench, { name: "found", scene: newScene() })
  expect(shown(bench)!.name).toBe("found")
  peek.run(bench, null)
  expect(shown(bench)!.name).toBe("held")
  stopComparing.run(bench, undefined)
  expect(shown(bench)).toBeNull()
})

test("a setup whose limbs cannot take the pose is not shown, and the bench is as it was", () => {
  const bench = fullBench()
  const scene = fullScene()
  const impossible = { ...scene, bow: { ...scene.bow, braceHeightMm: 5, drawLengthMm: 1900 } }
  compareWith.run(bench, { name: "impossible", scene: impossible })
  const state = bench.store.getState()
  expect(beside(state)?.evaluation.scene.pose ?? state.scene.pose).toBe(state.scene.pose)
  expect(sceneOn(bench)).toEqual(scene)
})
