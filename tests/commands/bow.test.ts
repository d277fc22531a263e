import { describe, expect, test } from "vitest"
import { addAccessory, setBoxed } from "../../src/commands/accessories"
import { addMount, setBowKind, setStringWrap } from "../../src/commands/bow"
import { addChain, setJoint } from "../../src/commands/parts"
import { newScene } from "../../src/scene/templates"
import { benchWith } from "../state/benches"
import { figures } from "../../src/state/derived"

const fresh = () => {
  const bench = benchWith(newScene())
  return { bench, scene: () => bench.store.getState().scene, numbers: () => figures(bench.store.getState()) }
}

describe("switching the kind of bow", () => {
  test("to a compound keeps everything but the limbs, and their mass and balance at brace and full draw", () => {
    const { bench, scene, numbers } = fresh()
    const before = scene().bow
    const [atBrace, drawn] = [numbers().centreMm, numbers().fullDraw.centreMm]
    const turn = numbers().inertiaGrip[2][2]
    expect(setBowKind.run(bench, { kind: "compound" })).toEqual({ ok: true, value: undefined })
    const after = scene().bow
    expect(after.kind).toBe("compound")
    expect(after).toMatchObject({ riser: before.riser, arrow: before.arrow, drawWeightLbf: before.drawWeightLbf })
    expect(after.limbs.massG).toBe(before.limbs.massG)
    // The limbs' places are rounded to 0.1 mm and the string runs from other ends.
    for (const axis of [0, 1, 2]) {
      expect(Math.abs(numbers().centreMm[axis]! - atBrace[axis]!)).toBeLessThan(0.5)
      expect(Math.abs(numbers().fullDraw.centreMm[axis]! - drawn[axis]!)).toBeLessThan(0.5)
    }
    expect(numbers().inertiaGrip[2][2] / turn).toBeCloseTo(1, 1)
  })

  test("is one undo step, and back again gives recurve limbs of the same mass", () => {
    const { bench, scene } = fresh()
    const first = scene()
    setBowKind.run(bench, { kind: "compound" })
    expect(bench.store.getState().history.past).toHaveLength(1)
    setBowKind.run(bench, { kind: "recurve" })
    expect(scene().bow).toMatchObject({ kind: "recurve", limbs: { massG: 160 }, braceHeightMm: 220 })
    bench.undo()
    bench.undo()
    expect(scene()).toEqual(first)
  })

  test("to a recurve takes a new bow's stringing where its limbs cannot take the compound's", () => {
    const scene = newScene()
    const bench = benchWith(scene)
    setBowKind.run(bench, { kind: "compound" })
    bench.change("a short brace", (draft) => {
      draft.bow.braceHeightMm = 50
      draft.bow.drawLengthMm = 1150
    })
    expect(setBowKind.run(bench, { kind: "recurve" }).ok).toBe(true)
    expect(bench.store.getState().scene.bow).toMatchObject({ braceHeightMm: 220, drawLengthMm: 665 })
  })

  test("to the kind it already is does nothing", () => {
    const { bench } = fresh()
    expect(setBowKind.run(bench, { kind: "recurve" }).ok).toBe(true)
    expect(bench.store.getState().history.past).toHaveLength(0)
  })
})

describe("the string on the limbs", () => {
  test("is switched on a recurve", () => {
    const { bench, scene } = fresh()
    expect(setStringWrap.run(bench, { wrap: true }).ok).toBe(true)
    expect(scene().bow).toMatchObject({ stringWrap: true })
  })

  test("is refused on a compound", () => {
    const { bench } = fresh()
    setBowKind.run(bench, { kind: "compound" })
    expect(setStringWrap.run(bench, { wrap: true })).toMatchObject({ ok: false })
  })
})

test("a mount that is there already stays as it is when it is added", () => {
  const { bench, scene } = fresh()
  bench.change("moved", (draft) => {
    draft.mounts.upper!.atMm[0] = 37
  })
  addMount.run(bench, { mount: "upper" })
  expect(scene().mounts.upper?.atMm[0]).toBe(37)
  bench.change("gone", (draft) => {
    delete draft.mounts.upper
  })
  addMount.run(bench, { mount: "upper" })
  expect(scene().mounts.upper?.atMm[0]).toBe(40)
})

describe("accessories", () => {
  test("one that is given a size resists turning more than the same as a point", () => {
    const { bench, scene, numbers } = fresh()
    addAccessory.run(bench, { name: "quiver" })
    const point = numbers().inertiaGrip[0][0]
    expect(setBoxed.run(bench, { index: 0, boxed: true }).ok).toBe(true)
    expect(scene().accessories[0]?.sizeMm).toEqual([40, 60, 30])
    expect(numbers().inertiaGrip[0][0]).toBeGreaterThan(point)
    setBoxed.run(bench, { index: 0, boxed: false })
    expect(scene().accessories[0]).not.toHaveProperty("sizeMm")
    expect(numbers().inertiaGrip[0][0]).toBe(point)
  })

  test("a size for one that is not there is refused", () => {
    expect(setBoxed.run(fresh().bench, { index: 3, boxed: true })).toMatchObject({ ok: false })
  })
})

describe("the joint of a swing weight", () => {
  test("is changed where a swing weight stands", () => {
    const { bench, scene } = fresh()
    addChain.run(bench, { mount: "back", part: "swing" })
    expect(setJoint.run(bench, { address: ["rig", 0, "chain", 0], joint: "ball" }).ok).toBe(true)
    expect(scene().rig[0]?.chain[0]).toMatchObject({ part: "swing", joint: "ball" })
  })

  test("is refused on any other part", () => {
    const { bench } = fresh()
    addChain.run(bench, { mount: "front", part: "rod" })
    expect(setJoint.run(bench, { address: ["rig", 0, "chain", 0], joint: "ball" })).toMatchObject({ ok: false })
  })
})
