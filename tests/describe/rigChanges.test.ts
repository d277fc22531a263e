import { expect, test } from "vitest"
import { rigChanges, rigChangeText } from "../../src/describe/rigChanges"
import { validateScene } from "../../src/scene/parse"
import { defaultPreferences } from "../../src/state/preferences"
import { arm, damper, discs, extender, rigged, rod, vbar } from "../scene/documents"

type Chains = Parameters<typeof rigged>[0]
const rigOf = (chains: Chains) => {
  const scene = validateScene(rigged(chains))
  if (!scene.ok) throw new Error(JSON.stringify(scene.errors))
  return scene.value
}
const changes = (before: Chains, after: Chains) =>
  rigChanges(rigOf(before), rigOf(after).rig, defaultPreferences).map(rigChangeText)

const side = (count: number, splay = 40, droop = 5) =>
  arm(splay, droop, [rod({ massG: 57, lengthMm: 253 }), discs({ count })])

test("alike rigs need no change, however their parts are named or stacked", () => {
  const before = { front: [rod(), discs({ count: 5 })] }
  const after = {
    front: [rod({ label: "the long one", maxEndWeightG: 250 }), discs({ count: 3 }), discs({ count: 2 })],
  }
  expect(changes(before, after)).toEqual([])
})

test("both sides are named once where the same is done to them, each by itself where not", () => {
  const before = { front: [vbar({ left: side(5), right: side(5) })] }
  expect(changes(before, { front: [vbar({ left: side(7, 45, 0), right: side(7, 45, 0) })] })).toEqual([
    "Both sides: +2 discs of 28\u00a0g; 5° wider, to splay 45°; 5° higher, to droop 0°",
  ])
  expect(changes(before, { front: [vbar({ left: side(4), right: side(5, 33) })] })).toEqual([
    "Left side: \u22121 disc of 28\u00a0g",
    "Right side: 7° closer, to splay 33°",
  ])
})

test("pieces are fitted, swapped and taken off by name and length, from the mount outward", () => {
  const before = { front: [extender(), rod(), discs()], lower: [discs({ count: 2 })] }
  const after = {
    front: [
      vbar({ left: side(2), label: "wide bar" }),
      rod({ label: "long", lengthMm: 790 }),
      damper(),
      discs({ eachG: 57 }),
    ],
    back: [rod({ lengthMm: 300 })],
  }
  expect(changes(before, after)).toEqual([
    "Front: take off the extender; fit a V-bar: “wide bar”, 33\u00a0mm; swap the rod for “long”, 790\u00a0mm; fit a damper: 31\u00a0mm; \u22125 discs of 28\u00a0g; +5 discs of 57\u00a0g",
    "Left side: fit a rod: 253\u00a0mm; +2 discs of 28\u00a0g; set to splay 40°, droop 5°",
    "Lower: \u22122 discs of 28\u00a0g",
    "Back: fit a rod: 300\u00a0mm",
  ])
})

test("an arm that goes is said to go, on another mount with the mount's name", () => {
  const before = { lower: [vbar({ left: side(3), right: side(3) })] }
  expect(changes(before, { lower: [vbar({ right: side(3) })] })).toEqual([
    "Lower, left side: take off the rod; \u22123 discs of 28\u00a0g; take off the arm",
  ])
})
