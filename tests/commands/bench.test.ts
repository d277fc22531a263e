import { describe, expect, test } from "vitest"
import * as onBench from "../../src/commands/bench"
import * as preferences from "../../src/commands/preferences"
import * as setup from "../../src/commands/setup"
import { setNumber } from "../../src/commands/numbers"
import { newScene } from "../../src/scene/templates"
import { hasUnsavedChanges } from "../../src/state/bench"
import { defaultPreferences } from "../../src/state/preferences"
import { DONE, fullBench, fullScene, numberOn, sceneOn, stepsOn } from "../state/benches"

const commands = { ...onBench, ...setup, ...preferences }

test("undo and redo can be done exactly when there is something to walk to", () => {
  const bench = fullBench()
  const possible = () => [commands.undo, commands.redo].map(({ enabled }) => enabled?.(bench.store.getState()))
  expect(possible()).toEqual([false, false])
  bench.begin("drag")
  expect(possible()).toEqual([false, false])
  setNumber.run(bench, { key: "front/rod:lengthMm", value: 570 })
  expect(possible()).toEqual([true, false])
  bench.commit()
  expect(possible()).toEqual([true, false])
  commands.undo.run(bench)
  expect(possible()).toEqual([false, true])
  commands.redo.run(bench)
  expect(possible()).toEqual([true, false])
})

test("New puts a plain bow on the bench, in no file, and undo brings back what was there", () => {
  const bench = fullBench()
  setNumber.run(bench, { key: "front/rod:lengthMm", value: 570 })
  expect(commands.newBench.run(bench)).toEqual(DONE)
  expect(sceneOn(bench)).toEqual(newScene())
  expect(hasUnsavedChanges(bench.store.getState())).toBe(false)
  commands.undo.run(bench)
  expect(numberOn(bench, "front/rod:lengthMm")).toBe(570)
})

test("opening names the scene in the history", () => {
  const bench = fullBench()
  commands.openScene.run(bench, { scene: newScene(), fileName: "new.json", saved: true })
  expect(stepsOn(bench)).toEqual(["opened New bow"])
  expect(bench.store.getState().fileName).toBe("new.json")
})

test("name, notes and hand are part of the scene, one undo step each", () => {
  const bench = fullBench()
  commands.rename.run(bench, { name: "after the winter" })
  commands.writeNotes.run(bench, { notes: "new string" })
  commands.setHand.run(bench, { hand: "left" })
  expect(sceneOn(bench)).toMatchObject({ name: "after the winter", notes: "new string", bow: { hand: "left" } })
  expect(stepsOn(bench)).toHaveLength(3)
  expect(commands.rename.run(bench, { name: "x".repeat(201) }).ok).toBe(false)
  for (let step = 0; step < 3; step++) bench.undo()
  expect(sceneOn(bench)).toEqual(fullScene())
})

describe("targets", () => {
  test("are set, replaced and dropped by themselves, each with undo", () => {
    const bench = fullBench()
    expect(commands.setTarget.run(bench, { target: { massMaxG: 3700, upMm: [-57, -13] } })).toEqual(DONE)
    expect(sceneOn(bench).target).toEqual({ ...fullScene().target, massMaxG: 3700, upMm: [-57, -13] })
    expect(commands.setTarget.run(bench, { target: { sideMm: undefined } })).toEqual(DONE)
    expect(sceneOn(bench).target).not.toHaveProperty("sideMm")
    bench.undo()
    bench.undo()
    expect(sceneOn(bench)).toEqual(fullScene())
  })

  test("may be a single number from and to", () => {
    const bench = fullBench()
    expect(commands.setTarget.run(bench, { target: { forwardMm: [53, 53] } })).toEqual(DONE)
    expect(sceneOn(bench).target.forwardMm).toEqual([53, 53])
  })

  test.each<[string, Parameters<typeof commands.setTarget.run>[1]["target"], string, RegExp]>([
    [
      "the wrong way round",
      { forwardMm: [70, 30] },
      "target.forwardMm",
      /70 to 30 given; the smaller number comes first/,
    ],
    ["off their range", { sideMm: [-5, 501] }, "target.sideMm[1]", /501 given; a number in -500 … 500 mm is needed/],
  ])("%s are refused with the place, all of them", (_what, wrong, path, message) => {
    const bench = fullBench()
    const before = bench.store.getState()
    const refused = commands.setTarget.run(bench, { target: { massMaxG: 3700, ...wrong } })
    expect(refused.ok === false && refused.errors).toMatchObject([{ path, message: expect.stringMatching(message) }])
    expect(bench.store.getState()).toBe(before)
  })
})

test("preferences, overlays, camera and what is pointed at are no undo steps and leave the scene alone", () => {
  const bench = fullBench()
  const scene = sceneOn(bench)
  commands.setPreferences.run(bench, { massUnit: "oz" })
  commands.toggleOverlay.run(bench, "ellipsoid")
  commands.toggleOverlay.run(bench, "plumb")
  commands.lookFrom.run(bench, "top")
  commands.select.run(bench, "front/rod")
  commands.hover.run(bench, "front/weights")
  expect(bench.store.getState()).toMatchObject({
    camera: "top",
    selected: "front/rod",
    hovered: "front/weights",
    preferences: {
      ...defaultPreferences,
      massUnit: "oz",
      show: { ...defaultPreferences.show, ellipsoid: true, plumb: false },
    },
  })
  expect(stepsOn(bench)).toEqual([])
  expect(sceneOn(bench)).toBe(scene)
})

test("pointing at what is pointed at already tells nobody", () => {
  const bench = fullBench()
  commands.hover.run(bench, "front/rod")
  const before = bench.store.getState()
  commands.hover.run(bench, "front/rod")
  expect(bench.store.getState()).toBe(before)
})
