import { describe, expect, it } from "vitest"
import type { Element, Scene } from "../../src/scene/schema"
import { evaluate } from "../../src/scene/evaluate"
import { changedBy, type Suggestion, suggestions } from "../../src/scene/suggest"
import { structuresFor } from "../../src/scene/suggest/structures"
import { arm, damper, type Document, discs, extender, rigged, rod, swing, vbar } from "./documents"
import { sceneOf } from "./scenes"

const side = (...chain: Document[]) => arm(37, 11, chain)
const scene = (front: Document[], target: Scene["target"] = {}): Scene => ({
  ...sceneOf(rigged({ front })),
  target,
})
const kindsFor = (of: Scene, key: Parameters<typeof structuresFor>[0] = "forwardMm") =>
  structuresFor(key, of).map(({ kind, edits }) => [kind, ...edits(1).map(({ path, index }) => `${path}[${index}]`)])
const suggested = (of: Scene): Suggestion[] => {
  const evaluation = evaluate(of)
  if (!evaluation.ok) throw new Error("not evaluated")
  return suggestions(of, evaluation.value)
}
const chainOf = (of: Scene): readonly Element[] => of.rig[0]!.chain

describe("parts that may be put in or taken out", () => {
  it("are an extender where a chain has none, and a stack where it ends in a rod or a damper", () => {
    expect(kindsFor(scene([rod()]))).toEqual([
      ["addExtender", "front[0]"],
      ["addStack", "front[1]"],
    ])
    expect(kindsFor(scene([extender(), rod(), damper()]))).toEqual([
      ["removeExtender", "front[0]"],
      ["addStack", "front[3]"],
    ])
    expect(kindsFor(scene([extender(), rod(), swing()]))).toEqual([["removeExtender", "front[0]"]])
  })

  it("never leave a mount empty: a lone extender or a lone stack stays", () => {
    expect(kindsFor(scene([extender()]))).toEqual([])
    expect(kindsFor(scene([discs({ count: 17 })]))).toEqual([["addExtender", "front[0]"]])
  })

  it("are a whole stack only where it is too large to be taken off disc by disc", () => {
    expect(kindsFor(scene([extender(), rod(), discs({ count: 13 })]))).toContainEqual(["removeStack", "front[2]"])
    expect(kindsFor(scene([extender(), rod(), discs({ count: 12 })]))).toEqual([["removeExtender", "front[0]"]])
  })

  it("change both arms of a V-bar alike, and neither where they differ", () => {
    const paired = scene([vbar({ left: side(rod()), right: side(rod()) })])
    expect(kindsFor(paired)).toEqual([
      ["addExtender", "front[0]"],
      ["addExtender", "front/vbar/left[0]", "front/vbar/right[0]"],
      ["addStack", "front/vbar/left[1]", "front/vbar/right[1]"],
    ])
    const apart = scene([extender(), vbar({ left: side(extender(), rod()), right: side(rod(), discs()) })])
    expect(kindsFor(apart)).toEqual([["removeExtender", "front[0]"]])
  })

  it("are a stack on one arm, and nothing else, for the target to the side", () => {
    const paired = scene([vbar({ left: side(rod()), right: side(rod()) }), rod()])
    expect(kindsFor(paired, "sideMm")).toEqual([
      ["addStack", "front/vbar/left[1]"],
      ["addStack", "front/vbar/right[1]"],
    ])
  })

  it("are extenders of growing length, as heavy for it as a new one, and discs like those on the rig", () => {
    const [add, stack] = structuresFor("forwardMm", scene([rod()]))
    const lengths = Array.from({ length: add!.sizes }, (_, i) => add!.edits(i + 1)[0]!.put!)
    expect(lengths.map((part) => part.part === "extender" && part.lengthMm)).toEqual([50, 75, 100, 125, 150, 175, 200])
    expect(lengths[2]).toMatchObject({ massG: 55 })
    expect(lengths[6]).toMatchObject({ massG: 110 })
    expect(stack!.edits(3)[0]!.put).toMatchObject({ part: "weights", count: 3, eachG: 28 })
    const lower = sceneOf(rigged({ front: [rod()], lower: [discs({ eachG: 43, outerMm: 31 })] }))
    const like = structuresFor("upMm", lower).find(({ kind }) => kind === "addStack")
    expect(like!.edits(2)[0]!.put).toMatchObject({ count: 2, eachG: 43, outerMm: 31 })
  })

  it("cost as is stated: an extender out 15, in 20 and 0.05 a millimetre, a stack 25 and its discs on each arm", () => {
    const costs = (of: Scene, size: number) =>
      Object.fromEntries(structuresFor("forwardMm", of).map(({ kind, cost }) => [kind, cost(size)]))
    expect(costs(scene([rod()]), 3)).toEqual({ addExtender: 25, addStack: 28 })
    expect(costs(scene([extender(), rod(), discs({ count: 14 })]), 1)).toEqual({ removeExtender: 15, removeStack: 39 })
    const bare = { left: side(extender(), rod()), right: side(extender(), rod()) }
    expect(costs(scene([extender(), vbar(bare)]), 2)).toEqual({ removeExtender: 15, addStack: 54 })
  })
})

describe("suggestions that change parts", () => {
  it("put in the shortest extender that is enough", () => {
    const before = scene([rod({ massG: 110, lengthMm: 700 }), discs({ count: 1, eachG: 15 })], { forwardMm: [38, 55] })
    const [found] = suggested(before).filter(({ kind }) => kind === "addExtender")
    const after = changedBy(before, found!)
    const [first] = chainOf(after)
    if (first?.part !== "extender") throw new Error("no extender")
    expect(found!.predicted.after).toBeGreaterThanOrEqual(38)
    const shorter = { ...first, lengthMm: first.lengthMm - 25, massG: Math.round(0.55 * (first.lengthMm - 25)) }
    const less = evaluate({ ...after, rig: [{ mount: "front", chain: [shorter, ...chainOf(before)] }] })
    expect(less.ok && less.value.now.centre[0]).toBeLessThan(0.0385)
    expect(chainOf(after).slice(1)).toEqual(chainOf(before))
  })

  it("begin a stack on a bare rod, within the rod's rating", () => {
    const rated = (maxEndWeightG: number) =>
      suggested(scene([extender(), rod({ maxEndWeightG })], { forwardMm: [55, 70] })).filter(
        ({ kind }) => kind === "addStack",
      )
    expect(rated(400)).toHaveLength(1)
    expect(rated(30)).toHaveLength(0)
  })

  it("take an extender out where that is enough", () => {
    const before = scene([extender({ lengthMm: 150 }), rod(), discs({ count: 4, eachG: 33 })])
    const now = evaluate(before)
    if (!now.ok) throw new Error("not evaluated")
    const at = now.value.now.centre[0] * 1e3
    const found = suggested({ ...before, target: { forwardMm: [at - 30, at - 3] } })
    const out = found.find(({ kind }) => kind === "removeExtender")
    expect(out).toMatchObject({ cost: 15, breaks: [], edits: [{ path: "front", index: 0, put: null }] })
    expect(chainOf(changedBy(before, out!))).toEqual(chainOf(before).slice(1))
  })
})
