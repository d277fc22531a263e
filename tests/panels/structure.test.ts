import { describe, expect, test } from "vitest"
import { groupsSelector, rowGroups } from "../../src/panels/rig/structure"
import type { Scene } from "../../src/scene/schema"
import { evaluate } from "../../src/scene/evaluate"
import { newAccessory, newArm, newElement, newScene } from "../../src/scene/templates"
import type { BenchState } from "../../src/state/bench"
import { benchWith } from "../state/benches"

function rigged(): Scene {
  const scene = newScene()
  const vbar = { ...newElement.vbar, left: newArm(), right: newArm() }
  scene.rig.push({ mount: "back", chain: [{ ...newElement.rod }] })
  scene.rig.push({
    mount: "front",
    chain: [vbar, { ...newElement.rod }, { ...newElement.weights }, { ...newElement.weights }],
  })
  scene.accessories.push(newAccessory("sight"), newAccessory("sight"))
  return scene
}

describe("the rows of the parts table", () => {
  test("stand under their mounts in the order front, upper, lower, back, arms after the chain that carries them", () => {
    const ids = rowGroups(rigged()).map(({ id }) => id)
    expect(ids).toEqual([
      "front",
      "front/vbar/left",
      "front/vbar/right",
      "upper",
      "lower",
      "back",
      "accessories",
      "bow",
    ])
  })

  test("are exactly the parts that are weighed", () => {
    for (const draw of [0, 0.7]) {
      const scene = rigged()
      scene.pose.draw = draw
      const weighed = evaluate(scene)
      const rows = rowGroups(scene).flatMap((group) => group.rows.map(({ path }) => path))
      expect(weighed.ok && [...weighed.value.now.parts.map(({ path }) => path)].sort()).toEqual([...rows].sort())
    }
  })

  test("point at their own places in the scene", () => {
    const scene = rigged()
    const weighed = evaluate(scene)
    if (!weighed.ok) throw new Error("valid")
    const places = new Map(weighed.value.now.parts.map(({ path, address }) => [path, address]))
    for (const { rows } of rowGroups(scene)) for (const row of rows) expect(row.address).toEqual(places.get(row.path))
  })

  test("offer no V-bar on an arm and every kind on a mount, used or not", () => {
    const groups = new Map(rowGroups(rigged()).map((group) => [group.id, group.adding]))
    const kinds = (id: string) => {
      const adding = groups.get(id)
      return adding != null && adding.to !== "accessories" ? adding.kinds : []
    }
    expect(kinds("front/vbar/left")).not.toContain("vbar")
    expect(kinds("front")).toContain("vbar")
    expect(kinds("upper")).toContain("swing")
    expect(groups.get("upper")).toMatchObject({ to: "mount", mount: "upper" })
    expect(groups.get("bow")).toBeNull()
  })
})

describe("the table's shape", () => {
  test("stays the same object while numbers change and is another once a part is added", () => {
    const bench = benchWith(rigged())
    const select = groupsSelector()
    const now = () => select(bench.store.getState() as BenchState)
    const first = now()
    bench.change("longer", (draft) => {
      const [rod] = draft.rig[0]!.chain
      if (rod?.part === "rod") rod.lengthMm = 353
    })
    expect(now()).toBe(first)
    bench.change("more", (draft) => {
      draft.rig[0]!.chain.push({ ...newElement.weights })
    })
    expect(now()).not.toBe(first)
  })
})
