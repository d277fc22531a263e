import { produce } from "immer"
import { expect, test } from "vitest"
import { evaluate } from "../../src/scene/evaluate"
import type { Scene } from "../../src/scene/schema"
import { partsApart, samePart } from "../../src/state/samePart"
import { fullScene } from "./benches"

function nowOf(scene: Scene) {
  const found = evaluate(scene)
  if (!found.ok) throw new Error("the scene is not valid")
  return found.value.now
}
const partsOf = (scene: Scene) => nowOf(scene).parts

test("only what was moved or weighs another is another part", () => {
  const scene = fullScene()
  const changed = produce(scene, (draft) => {
    Object.assign(draft.rig[0]!.chain[2]!, { lengthMm: 653 })
  })
  const before = new Map(partsOf(scene).map((part) => [part.path, part]))
  const others = partsOf(changed).filter((part) => !samePart(part, before.get(part.path)))
  // The rod, and what stands beyond it.
  expect(others.map(({ path }) => path)).toEqual(["front/rod", "front/damper", "front/weights", "front/weights#2"])
  expect(samePart(partsOf(scene)[0]!, undefined)).toBe(false)
})

test("of a bow that is held otherwise every part is apart, of one held alike only those that differ", () => {
  const scene = fullScene()
  const here = nowOf(scene)
  const byPath = new Map(here.parts.map((part) => [part.path, part]))
  expect(partsApart(here, here.pose, byPath)).toEqual([])
  for (const turned of [{ slopeDeg: 17 }, { cantDeg: 7 }]) {
    const other = nowOf({ ...scene, pose: { ...scene.pose, ...turned } })
    expect(partsApart(other, here.pose, byPath)).toBe(other.parts)
  }
})
