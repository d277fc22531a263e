import { describe, expect, test } from "vitest"
import { addReading, applyReadings, changeReading, excludeReading, removeReading } from "../../src/commands/measure"
import { changeImpression, type Impression, logSetup, removeSetup, tryAgain } from "../../src/commands/log"
import { undo } from "../../src/commands/bench"
import type { Measurement, Scene } from "../../src/scene/schema"
import { createBench } from "../../src/state/bench"
import { followReadings, spreads } from "../../src/state/spreads"
import { appliedSpreads } from "../../src/scene/measure"
import { fullDocument } from "../scene/documents"
import { onBow, weighed, wholeSession } from "../scene/measure/sessions"
import { sceneOf } from "../scene/scenes"

const real = sceneOf(fullDocument())
const guessed: Scene = { ...real, bow: { ...real.bow, riser: { ...real.bow.riser, massG: 1500, centreMm: [0, 0, 0] } } }
const benchWith = (measurements?: Measurement[]) =>
  createBench(measurements === undefined ? guessed : { ...guessed, measurements })
const impression: Impression = { date: "2026-05-17", name: "long", feel: "slow", rating: 4, scores: [27], note: "" }

describe("readings", () => {
  test("are added, changed, left out and removed, each as one undo step", () => {
    const bench = benchWith()
    const list = () => bench.store.getState().scene.measurements
    const reading = weighed(real, onBow) as Extract<Measurement, { kind: "scale" }>
    expect(addReading.run(bench, { reading })).toEqual({ ok: true, value: undefined })
    expect(addReading.run(bench, { reading: { ...reading, note: "again" } }).ok).toBe(true)
    expect(changeReading.run(bench, { place: 0, reading: { ...reading, massG: 2713 } }).ok).toBe(true)
    expect(excludeReading.run(bench, { place: 1, excluded: true }).ok).toBe(true)
    expect(list()).toMatchObject([
      { massG: 2713, excluded: false },
      { note: "again", excluded: true },
    ])
    expect(removeReading.run(bench, { place: 0 }).ok).toBe(true)
    expect(removeReading.run(bench, { place: 0 }).ok).toBe(true)
    expect(bench.store.getState().scene).not.toHaveProperty("measurements")
    for (let count = 0; count < 6; count++) undo.run(bench)
    expect(bench.store.getState().scene).toEqual(guessed)
  })

  test("off their range are refused with their place and their range, and change nothing", () => {
    const bench = benchWith()
    const reading = { ...weighed(real, onBow), massG: 0 } as Measurement
    const refused = addReading.run(bench, { reading })
    expect(refused).toMatchObject({ ok: false, errors: [{ path: "measurements[0].massG" }] })
    expect(bench.store.getState().scene).toBe(guessed)
    expect(removeReading.run(bench, { place: 3 })).toMatchObject({ errors: [{ path: "measurements[3]" }] })
  })
})

describe("putting the measured riser on the bow", () => {
  test("is one undo step, and the riser is then the real one", () => {
    const bench = benchWith(wholeSession(real, onBow))
    expect(applyReadings.run(bench)).toEqual({ ok: true, value: undefined })
    const { riser } = bench.store.getState().scene.bow
    expect(riser.massG).toBeCloseTo(real.bow.riser.massG, 3)
    expect(riser.centreMm[0]).toBeCloseTo(real.bow.riser.centreMm[0], 3)
    undo.run(bench)
    expect(bench.store.getState().scene.bow.riser.massG).toBe(1500)
  })

  test("is refused without a reading that counts", () => {
    const bench = benchWith([{ ...weighed(real, onBow), excluded: true }])
    expect(applyReadings.enabled?.(bench.store.getState())).toBe(false)
    expect(applyReadings.run(bench)).toMatchObject({ ok: false })
  })

  test("gives every number its ± once what works it out has come, until the riser is another one", async () => {
    const bench = benchWith(wholeSession(real, onBow))
    followReadings(bench, () => Promise.resolve(appliedSpreads))
    await Promise.resolve()
    expect(spreads(bench.store.getState())).toBeNull()
    applyReadings.run(bench)
    const found = spreads(bench.store.getState())
    expect(found?.massG).toBeGreaterThan(5)
    expect(spreads(bench.store.getState())).toBe(found)
    bench.change("heavier", (draft) => {
      draft.bow.riser.massG += 3
    })
    expect(spreads(bench.store.getState())).toBeNull()
  })
})

describe("tried setups", () => {
  test("are noted with the rig on the bench, and that rig comes back as one undo step", () => {
    const bench = benchWith()
    const { rig } = guessed
    expect(logSetup.run(bench, { impression }).ok).toBe(true)
    bench.change("bare", (draft) => {
      draft.rig = []
    })
    expect(logSetup.run(bench, { impression: { ...impression, name: "none" } }).ok).toBe(true)
    expect(tryAgain.run(bench, { place: 0 }).ok).toBe(true)
    expect(bench.store.getState().scene.rig).toEqual(rig)
    undo.run(bench)
    expect(bench.store.getState().scene.rig).toEqual([])
    expect(bench.store.getState().scene.log?.map(({ name }) => name)).toEqual(["long", "none"])
  })

  test("are changed and removed, and a feel of six is refused", () => {
    const bench = benchWith()
    logSetup.run(bench, { impression })
    const changed = changeImpression.run(bench, { place: 0, impression: { ...impression, rating: 6 } })
    expect(changed).toMatchObject({ ok: false, errors: [{ path: "log[0].rating" }] })
    expect(changeImpression.run(bench, { place: 0, impression: { ...impression, feel: "quick" } }).ok).toBe(true)
    expect(bench.store.getState().scene.log).toMatchObject([{ feel: "quick", rig: guessed.rig }])
    expect(removeSetup.run(bench, { place: 0 }).ok).toBe(true)
    expect(bench.store.getState().scene).not.toHaveProperty("log")
    expect(removeSetup.run(bench, { place: 0 })).toMatchObject({ ok: false })
  })

  test("whose mount is gone say so when they are to be put on again", () => {
    const bench = createBench({ ...guessed, rig: [], mounts: {}, log: [{ ...impression, rig: guessed.rig }] })
    expect(tryAgain.run(bench, { place: 0 })).toMatchObject({
      ok: false,
      errors: [{ path: "rig[0].mount" }, {}, {}, {}],
    })
  })
})
