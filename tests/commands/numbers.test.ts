import { describe, expect, test } from "vitest"
import { allowedValue, asOneStep, clearNumber, setNumber, setNumbers } from "../../src/commands/numbers"
import type { Result } from "../../src/scene/errors"
import { validateScene } from "../../src/scene/parse"
import { slotNamed, slotsOf } from "../../src/scene/slots"
import { createBench } from "../../src/state/bench"
import { fullDocument } from "../scene/documents"
import { sceneOf } from "../scene/scenes"
import { benchWith, DONE, fullBench, fullScene, numberOn, sceneOn, stepsOn } from "../state/benches"

const errorsOf = (result: Result<void>) => (result.ok ? [] : result.errors)
const LEFT = "front/vbar/left"
const RIGHT = "front/vbar/right"

describe("setting numbers", () => {
  test("sets each where its key says, as one undo step", () => {
    const bench = fullBench()
    const changes = [
      { key: "bow/riser:centreMm.up", value: -17 },
      { key: "front/weights#2:count", value: 5 },
      { key: "accessories/sight#2:massG", value: 29 },
      { key: "pose:slopeDeg", value: -23 },
    ]
    expect(setNumbers.run(bench, { label: "four numbers", changes })).toEqual(DONE)
    expect(changes.map(({ key }) => numberOn(bench, key))).toEqual([-17, 5, 29, -23])
    expect(sceneOn(bench).accessories.map(({ massG }) => massG)).toEqual([210, 31, 29])
    expect(stepsOn(bench)).toEqual(["four numbers"])
  })

  test("reaches every number a scene has: each set to its least or its most is either there or refused by name", () => {
    const bench = fullBench()
    for (const { key, field } of slotsOf(fullScene())) {
      for (const value of [field.min, field.max]) {
        const result = setNumber.run(bench, { key, value })
        if (result.ok) expect(numberOn(bench, key), key).toBe(value)
        else expect(errorsOf(result)[0]?.message, key).toMatch(/needed|smaller number|no body|reached|less than/i)
        if (result.ok) bench.undo()
        expect(sceneOn(bench), key).toEqual(fullScene())
      }
    }
  })

  test("sets all or none: one value off its range and the very same state stays", () => {
    const bench = fullBench()
    const before = bench.store.getState()
    const refused = setNumbers.run(bench, {
      label: "two numbers",
      changes: [
        { key: "front/rod:lengthMm", value: 570 },
        { key: "front/weights:count", value: 61 },
      ],
    })
    expect(errorsOf(refused)).toMatchObject([
      {
        code: "not-allowed",
        path: "rig[0].chain[4].count",
        message: "61 given; a whole number in 0 … 60 is needed",
      },
    ])
    expect(bench.store.getState()).toBe(before)
  })

  test.each<[string, string, number, string]>([
    ["too small", "front/rod:lengthMm", 0, "0 given; a number in 1 … 2000 mm is needed"],
    ["too large", "front/rod:massG", 2003, "2003 given; a number in 0 … 2000 g is needed"],
    ["not whole", "front/weights:count", 2.5, "2.5 given; a whole number in 0 … 60 is needed"],
    ["not a number", "front/rod:lengthMm", Number.NaN, "NaN given; a number in 1 … 2000 mm is needed"],
    ["endless", "bow/riser:massG", Number.POSITIVE_INFINITY, "Infinity given; a number in 1 … 10000 g is needed"],
  ])("refuses one that is %s with the range", (_what, key, value, message) => {
    const bench = fullBench()
    expect(errorsOf(setNumber.run(bench, { key, value })).map((error) => error.message)).toEqual([message])
    expect(sceneOn(bench)).toEqual(fullScene())
  })

  test("refuses what would break a rule between numbers, with the rule", () => {
    const bench = fullBench()
    const [error] = errorsOf(setNumber.run(bench, { key: "front/rod:innerMm", value: 18 }))
    expect(error).toMatchObject({ code: "contradiction", path: "rig[0].chain[2].innerMm" })
    expect(numberOn(bench, "front/rod:innerMm")).toBe(15)
  })

  test("refuses a key the scene does not have, by its name", () => {
    const bench = fullBench()
    expect(errorsOf(setNumber.run(bench, { key: "front/rod#2:lengthMm", value: 7 }))).toEqual([
      { code: "not-allowed", path: "front/rod#2:lengthMm", message: "this scene has no such number" },
    ])
  })
})

test("a number that is set is checked by itself, and what is then on the bench keeps the whole file's rules", () => {
  for (const { key, field } of slotsOf(fullScene())) {
    for (const value of [field.min, field.max, allowedValue({ field }, (field.min + field.max) / 3)]) {
      const bench = createBench(fullScene())
      setNumber.run(bench, { key, value })
      const kept = validateScene(sceneOn(bench))
      expect(kept.ok ? [] : kept.errors, `${key} ${value}`).toEqual([])
    }
  }
})

describe("paired arms", () => {
  test("take the same number on both sides, whichever is set, as one undo step", () => {
    const bench = fullBench()
    setNumber.run(bench, { key: `${LEFT}:splayDeg`, value: 53 })
    expect([numberOn(bench, `${LEFT}:splayDeg`), numberOn(bench, `${RIGHT}:splayDeg`)]).toEqual([53, 53])
    setNumber.run(bench, { key: `${RIGHT}/rod:lengthMm`, value: 257 })
    expect([numberOn(bench, `${LEFT}/rod:lengthMm`), numberOn(bench, `${RIGHT}/rod:lengthMm`)]).toEqual([257, 257])
    expect(stepsOn(bench)).toHaveLength(2)
    bench.undo()
    bench.undo()
    expect(sceneOn(bench)).toEqual(fullScene())
  })

  test("are set by themselves when the coach says so, for good or once", () => {
    const bench = fullBench()
    bench.setPreferences({ pairArms: false })
    setNumber.run(bench, { key: `${LEFT}:droopDeg`, value: 17 })
    expect(numberOn(bench, `${RIGHT}:droopDeg`)).toBe(9)
    bench.setPreferences({ pairArms: true })
    setNumbers.run(bench, { label: "once", changes: [{ key: `${LEFT}:droopDeg`, value: 19 }], paired: false })
    expect(numberOn(bench, `${RIGHT}:droopDeg`)).toBe(9)
  })

  test("keep their own numbers where both are given, and where the other has no such part", () => {
    const bench = fullBench()
    const changes = [
      { key: `${LEFT}:splayDeg`, value: 31 },
      { key: `${RIGHT}:splayDeg`, value: 37 },
      { key: `${RIGHT}/damper:lengthMm`, value: 23 },
    ]
    expect(setNumbers.run(bench, { label: "both", changes })).toEqual(DONE)
    expect(changes.map(({ key }) => numberOn(bench, key))).toEqual([31, 37, 23])
  })

  test("are arms only: accessories called left and right have nothing to do with each other", () => {
    const accessories = ["left", "right"].map((name, index) => ({ name, massG: 31 + index, centreMm: [3, 5, 7] }))
    const bench = benchWith(sceneOf({ ...fullDocument(), accessories }))
    setNumber.run(bench, { key: "accessories/left:massG", value: 53 })
    expect(sceneOn(bench).accessories.map(({ massG }) => massG)).toEqual([53, 32])
  })
})

describe("clearing a number", () => {
  test("takes away what a part may do without, and undo brings it back", () => {
    const bench = fullBench()
    expect(clearNumber.run(bench, { key: "front/rod:maxEndWeightG" })).toEqual(DONE)
    expect(sceneOn(bench).rig[0]?.chain[2]).not.toHaveProperty("maxEndWeightG")
    expect(stepsOn(bench)).toEqual(["Front rod, maker's rated end weight cleared"])
    bench.undo()
    expect(numberOn(bench, "front/rod:maxEndWeightG")).toBe(220)
  })

  test.each([
    ["front/rod:innerMm", 0],
    ["mounts/upper:pitchDeg", 0],
    ["back/swing:damping", 0],
    ["archer:elbowElevationDeg", 3],
    ["pose:cantDeg", 0],
  ])("%s, which a file may leave out, goes back to the file's default", (key, fallback) => {
    const bench = fullBench()
    setNumber.run(bench, { key, value: 5 })
    expect(clearNumber.run(bench, { key })).toEqual(DONE)
    expect(numberOn(bench, key)).toBe(fallback)
    const { evaluation } = bench.store.getState()
    expect([evaluation.now.noseDown, evaluation.fullDraw.netLift].every(Number.isFinite)).toBe(true)
  })

  test.each(["front/rod:massG", "bow:braceHeightMm", "bow/riser:centreMm.up", "target:forwardMm.from"])(
    "%s, which is needed, is refused as missing and stays, before the file's rules have come too",
    (key) => {
      const bench = createBench(fullScene())
      const before = bench.store.getState()
      const [error] = errorsOf(clearNumber.run(bench, { key }))
      expect(error?.code).toBe("missing")
      expect(error?.message).toMatch(/^is missing; a number in .* is needed$/)
      expect(bench.store.getState()).toBe(before)
    },
  )

  test("that is not there is no step, and of which the scene has none is refused", () => {
    const bench = fullBench()
    expect(clearNumber.run(bench, { key: "front/extender:modulusGPa" })).toEqual(DONE)
    expect(stepsOn(bench)).toEqual([])
    expect(errorsOf(clearNumber.run(bench, { key: "lower/rod:modulusGPa" }))[0]?.path).toBe("lower/rod:modulusGPa")
  })

  test("clears it on both of paired arms, and on one of arms that are not", () => {
    const bench = fullBench()
    const keys = [LEFT, RIGHT].map((arm) => `${arm}/rod:modulusGPa`)
    setNumber.run(bench, { key: keys[0]!, value: 117 })
    expect(keys.map((key) => numberOn(bench, key))).toEqual([117, 117])
    bench.setPreferences({ pairArms: false })
    clearNumber.run(bench, { key: keys[0]! })
    expect(keys.map((key) => numberOn(bench, key))).toEqual([undefined, 117])
    bench.setPreferences({ pairArms: true })
    clearNumber.run(bench, { key: keys[0]! })
    expect(keys.map((key) => numberOn(bench, key))).toEqual([undefined, undefined])
  })
})

test("the nearest allowed value of a slot is inside its range, and whole where it counts", () => {
  const scene = fullScene()
  const length = slotNamed(scene, "front/rod:lengthMm")!
  const count = slotNamed(scene, "front/weights:count")!
  expect([-7, 2.5, 2003].map((value) => allowedValue(length, value))).toEqual([1, 2.5, 2000])
  expect([-7, 2.6, 73].map((value) => allowedValue(count, value))).toEqual([0, 3, 60])
})

test("a step is called by the part and the number that the page calls them", () => {
  const bench = fullBench()
  setNumber.run(bench, { key: `${LEFT}/rod:lengthMm`, value: 257 })
  setNumber.run(bench, { key: "mounts/upper:atMm.up", value: 113 })
  expect(stepsOn(bench)).toEqual(["Left side rod, length", "Upper mount, place, up"])
})

test("what is done as one step is one undo step", () => {
  const bench = fullBench()
  asOneStep(bench, "three at once", () => {
    setNumber.run(bench, { key: "front/rod:lengthMm", value: 570 })
    setNumber.run(bench, { key: "front/weights:count", value: 7 })
    setNumber.run(bench, { key: "front/rod:massG", value: 131 })
  })
  expect(stepsOn(bench)).toEqual(["three at once"])
  bench.undo()
  expect(sceneOn(bench)).toEqual(fullScene())
})
