import { describe, expect, test } from "vitest"
import { setNumber } from "../../src/commands/numbers"
import { addPart } from "../../src/commands/parts"
import { evaluate } from "../../src/scene/evaluate"
import { newScene } from "../../src/scene/templates"
import { hasUnsavedChanges, type Recipe } from "../../src/state/bench"
import { figures } from "../../src/state/derived"
import { sceneOf } from "../scene/scenes"
import { smallestDocument } from "../scene/documents"
import { benchWith, DONE, fullBench, fullScene, numberOn, sceneOn, stepsOn } from "./benches"

const ROD = "front/rod:lengthMm"
const other = () => sceneOf(smallestDocument())
const notes =
  (text: string): Recipe =>
  (draft) => {
    draft.notes = text
  }

test("a first scene that is not valid is refused with its place", () => {
  const wrong = newScene()
  wrong.bow.drawLengthMm = 170
  expect(() => benchWith(wrong)).toThrow("bow.drawLengthMm 170 given")
})

describe("a change", () => {
  test("is one undo step under its label, and its evaluation is that of the scene", () => {
    const bench = fullBench()
    expect(bench.change("written", notes("two"))).toEqual(DONE)
    setNumber.run(bench, { key: ROD, value: 570 })
    expect(stepsOn(bench)).toEqual(["written", "Front rod, length"])
    const { evaluation } = bench.store.getState()
    expect(evaluation.scene).toBe(sceneOn(bench))
    expect({ ok: true, value: evaluation }).toEqual(evaluate(sceneOn(bench)))
  })

  test.each<[string, Recipe, string]>([
    [
      "a number off its range",
      (draft) => {
        draft.bow.braceHeightMm = 7
      },
      "bow.braceHeightMm",
    ],
    [
      "a rule between numbers",
      (draft) => {
        draft.bow.drawLengthMm = 170
      },
      "bow.drawLengthMm",
    ],
    ["an unknown key", (draft) => void Object.assign(draft.bow, { colour: "red" }), "bow.colour"],
  ])("that breaks %s is refused with the place, and the very same state stays", (_what, recipe, path) => {
    const bench = fullBench()
    setNumber.run(bench, { key: ROD, value: 570 })
    const before = bench.store.getState()
    const refused = bench.change("wrong", recipe)
    expect(refused.ok === false && refused.errors.map((error) => error.path)).toEqual([path])
    expect(bench.store.getState()).toBe(before)
  })

  test("that the limbs cannot follow is refused with a reason, and the very same state stays", () => {
    const bench = benchWith(newScene())
    const before = bench.store.getState()
    const refused = setNumber.run(bench, { key: "bow:braceHeightMm", value: 490 })
    expect(refused.ok === false && refused.errors[0]?.code).toBe("unsolvable")
    expect(bench.store.getState()).toBe(before)
  })

  test("that alters nothing is no step and tells nobody", () => {
    const bench = fullBench()
    let told = 0
    bench.store.subscribe(() => told++)
    expect(setNumber.run(bench, { key: ROD, value: numberOn(bench, ROD)! })).toEqual(DONE)
    expect(stepsOn(bench)).toEqual([])
    expect(told).toBe(0)
  })

  test("leaves parts of the scene it does not touch as they are, so that what is drawn from them can be kept", () => {
    const bench = fullBench()
    const before = sceneOn(bench)
    setNumber.run(bench, { key: ROD, value: 570 })
    expect(sceneOn(bench)).not.toBe(before)
    expect(sceneOn(bench).bow).toBe(before.bow)
    expect(sceneOn(bench).accessories).toBe(before.accessories)
  })
})

describe("a gesture", () => {
  const drag = (bench = fullBench()) => {
    bench.begin("front rod dragged")
    for (const value of [715, 720, 725, 730]) setNumber.run(bench, { key: ROD, value })
    return bench
  }

  test("shows each move at once but adds no undo step before it ends", () => {
    const bench = drag()
    expect(numberOn(bench, ROD)).toBe(730)
    expect(stepsOn(bench)).toEqual([])
  })

  test("that is kept is one undo step under its own label, back to where it began", () => {
    const bench = drag()
    bench.commit()
    expect(stepsOn(bench)).toEqual(["front rod dragged"])
    bench.undo()
    expect(sceneOn(bench)).toEqual(fullScene())
    bench.redo()
    expect(numberOn(bench, ROD)).toBe(730)
  })

  test("that is given up restores the very scene and numbers it began with and leaves no step", () => {
    const bench = fullBench()
    const { scene, evaluation } = bench.store.getState()
    drag(bench)
    bench.cancel()
    expect(bench.store.getState()).toMatchObject({ gesture: null, history: { past: [], future: [] } })
    expect(sceneOn(bench)).toBe(scene)
    expect(bench.store.getState().evaluation).toBe(evaluation)
  })

  test("keeps the last good move when a later one is refused", () => {
    const bench = drag()
    expect(setNumber.run(bench, { key: ROD, value: 2001 }).ok).toBe(false)
    expect(numberOn(bench, ROD)).toBe(730)
    bench.commit()
    expect(stepsOn(bench)).toHaveLength(1)
  })

  test("without a move, or back where it began, is no step and no change to the file", () => {
    const bench = fullBench()
    bench.begin("nothing")
    bench.commit()
    drag(bench)
    setNumber.run(bench, { key: ROD, value: 710 })
    bench.commit()
    expect(stepsOn(bench)).toEqual([])
    expect(sceneOn(bench)).toEqual(fullScene())
    expect(hasUnsavedChanges(bench.store.getState())).toBe(false)
  })

  test("without a move leaves what was undone there to be redone", () => {
    const bench = drag()
    bench.commit()
    bench.undo()
    bench.begin("nothing")
    bench.commit()
    bench.redo()
    expect(numberOn(bench, ROD)).toBe(730)
  })

  test("is kept as a step of its own when another begins before it ended", () => {
    const bench = drag()
    bench.begin("notes")
    bench.change("typed", notes("three"))
    bench.commit()
    expect(stepsOn(bench)).toEqual(["front rod dragged", "notes"])
  })

  test("may change several things and lists; undo takes all back together", () => {
    const bench = drag()
    addPart.run(bench, { chain: ["rig", 0, "chain"], part: "weights" })
    bench.change("typed", notes("five"))
    bench.commit()
    expect(stepsOn(bench)).toHaveLength(1)
    bench.undo()
    expect(sceneOn(bench)).toEqual(fullScene())
  })

  test("that is undone while it lasts is first kept, so that redo brings it back", () => {
    const bench = drag()
    bench.undo()
    expect(sceneOn(bench)).toEqual(fullScene())
    bench.redo()
    expect(numberOn(bench, ROD)).toBe(730)
  })
})

describe("undo and redo", () => {
  test("walk through every step, say what they did and keep the numbers those of the scene", () => {
    const bench = fullBench()
    const massAtFirst = figures(bench.store.getState()).massG
    setNumber.run(bench, { key: "front/rod:massG", value: 153 })
    setNumber.run(bench, { key: "front/weights:count", value: 7 })
    bench.undo()
    expect(bench.store.getState().said.text).toBe("Undone: Front weights, discs")
    bench.undo()
    expect(figures(bench.store.getState()).massG).toBe(massAtFirst)
    bench.redo()
    expect(bench.store.getState().said.text).toBe("Redone: Front rod, mass")
    // 153 g in place of 123 g.
    expect(figures(bench.store.getState()).massG - massAtFirst).toBeCloseTo(30, 9)
  })

  test("with nothing left to walk to leave the very same state", () => {
    const bench = fullBench()
    const before = bench.store.getState()
    bench.undo()
    bench.redo()
    expect(bench.store.getState()).toBe(before)
  })

  test("say the same thing twice as two announcements", () => {
    const bench = fullBench()
    bench.say("Saved")
    bench.say("Saved")
    expect(bench.store.getState().said).toEqual({ text: "Saved", count: 2 })
  })
})

describe("opening another scene", () => {
  test("is one undo step which brings back the scene and the file it was in", () => {
    const bench = fullBench()
    bench.markSaved("mine.json")
    setNumber.run(bench, { key: ROD, value: 570 })
    const mine = sceneOn(bench)
    expect(bench.load("opened", other(), { fileName: "theirs.json", saved: true })).toEqual(DONE)
    expect(bench.store.getState()).toMatchObject({ fileName: "theirs.json", selected: null, hovered: null })
    expect(hasUnsavedChanges(bench.store.getState())).toBe(false)

    bench.undo()
    expect(sceneOn(bench)).toEqual(mine)
    expect(bench.store.getState().fileName).toBe("mine.json")
    expect(hasUnsavedChanges(bench.store.getState())).toBe(true)
    bench.undo()
    expect(hasUnsavedChanges(bench.store.getState())).toBe(false)

    bench.redo()
    bench.redo()
    expect(sceneOn(bench)).toEqual(other())
    expect(bench.store.getState().fileName).toBe("theirs.json")
    expect(hasUnsavedChanges(bench.store.getState())).toBe(false)
  })

  test("keeps a drag that was under way as a step before it", () => {
    const bench = fullBench()
    bench.begin("dragged")
    setNumber.run(bench, { key: ROD, value: 570 })
    bench.load("opened", other(), { fileName: null, saved: true })
    expect(stepsOn(bench)).toEqual(["dragged", "opened"])
    bench.undo()
    expect(numberOn(bench, ROD)).toBe(570)
  })

  test("that is not valid is refused and leaves the very same state, a drag under way included", () => {
    const bench = fullBench()
    bench.begin("dragged")
    setNumber.run(bench, { key: ROD, value: 570 })
    const before = bench.store.getState()
    const wrong = newScene()
    wrong.bow.drawWeightLbf = 151
    expect(bench.load("opened", wrong, { fileName: "wrong.json", saved: true }).ok).toBe(false)
    expect(bench.store.getState()).toBe(before)
  })
})

describe("unsaved changes", () => {
  test("are there after a change, gone when it is undone, saved or typed back", () => {
    const bench = fullBench()
    const unsaved = () => hasUnsavedChanges(bench.store.getState())
    expect(unsaved()).toBe(false)
    setNumber.run(bench, { key: ROD, value: 570 })
    expect(unsaved()).toBe(true)
    bench.undo()
    expect(unsaved()).toBe(false)
    setNumber.run(bench, { key: ROD, value: 530 })
    bench.markSaved("rod.json")
    expect(unsaved()).toBe(false)
    bench.undo()
    expect(unsaved()).toBe(true)
    setNumber.run(bench, { key: ROD, value: 530 })
    expect(unsaved()).toBe(false)
  })

  test("are all there is of a scene that no file holds", () => {
    const bench = fullBench()
    bench.load("restored", other(), { fileName: null, saved: false })
    expect(hasUnsavedChanges(bench.store.getState())).toBe(true)
  })
})
