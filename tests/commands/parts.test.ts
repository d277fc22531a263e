import { describe, expect, test } from "vitest"
import {
  addArm,
  addChain,
  addPart,
  duplicateItem,
  moveItem,
  removeItem,
  renameItem,
  toggleExtender,
} from "../../src/commands/parts"
import type { Result } from "../../src/scene/errors"
import type { Element } from "../../src/scene/schema"
import { newScene } from "../../src/scene/templates"
import type { Bench } from "../../src/state/bench"
import { benchWith, DONE, fullBench, fullScene, sceneOn, stepsOn } from "../state/benches"
import { done } from "./oneStep"

const FRONT = ["rig", 0, "chain"]
const VBAR = [...FRONT, 1]
const kinds = (chain: readonly Element[]) => chain.map(({ part }) => part)
const front = (bench: Bench) => sceneOn(bench).rig[0]!.chain
const firstError = (result: Result<void>) => (result.ok ? undefined : result.errors[0])

describe("adding a part", () => {
  test("puts it before the element named, or at the end", () => {
    const bench = fullBench()
    done(bench, "damper added", () => addPart.run(bench, { chain: FRONT, part: "damper", index: 2 }))
    done(bench, "rod added", () => addPart.run(bench, { chain: FRONT, part: "rod" }))
    expect(kinds(front(bench))).toEqual(["extender", "vbar", "damper", "rod", "damper", "weights", "weights", "rod"])
  })

  test("of any kind gives a scene that stands, on a mount and, but for a second V-bar, on an arm", () => {
    for (const part of ["extender", "rod", "damper", "weights", "vbar", "swing"] as const) {
      const bench = fullBench()
      expect(addPart.run(bench, { chain: FRONT, part }), part).toEqual(DONE)
      const onArm = addPart.run(bench, { chain: [...VBAR, "left", "chain"], part })
      if (part === "vbar") expect(firstError(onArm)?.path).toBe("rig[0].chain[1].left.chain[2].part")
      else expect(onArm, part).toEqual(DONE)
    }
  })

  test("to an arm takes a side rod, shorter than the front's", () => {
    const bench = fullBench()
    addPart.run(bench, { chain: FRONT, part: "rod" })
    addPart.run(bench, { chain: [...VBAR, "right", "chain"], part: "rod" })
    const vbar = front(bench)[1]
    const side = vbar?.part === "vbar" ? vbar.right?.chain.at(-1) : undefined
    expect(side).toMatchObject({ part: "rod", lengthMm: 250 })
    expect(front(bench).at(-1)).toMatchObject({ part: "rod", lengthMm: 700 })
  })

  test("twice gives two parts that change apart", () => {
    const bench = fullBench()
    addPart.run(bench, { chain: FRONT, part: "rod" })
    addPart.run(bench, { chain: FRONT, part: "rod" })
    bench.change("shorter", (draft) => {
      Object.assign(draft.rig[0]?.chain.at(-1) ?? {}, { lengthMm: 530 })
    })
    expect(front(bench).slice(-2)).toMatchObject([{ lengthMm: 700 }, { lengthMm: 530 }])
  })

  test("where there is no chain is refused with the place", () => {
    const bench = fullBench()
    for (const chain of [["rig", 7, "chain"], [...FRONT, 2], ["bow"]]) {
      expect(firstError(addPart.run(bench, { chain, part: "rod" }))?.message).toBe("nothing stands there in this scene")
    }
    expect(sceneOn(bench)).toEqual(fullScene())
  })
})

describe("using a mount", () => {
  test("starts a chain on it, and makes the mount where the bow has none", () => {
    const bench = benchWith(newScene())
    bench.change("no upper mount", (draft) => {
      delete draft.mounts.upper
    })
    done(bench, "upper weights added", () => addChain.run(bench, { mount: "upper", part: "weights" }))
    expect(sceneOn(bench).rig.map(({ mount, chain }) => [mount, kinds(chain)])).toEqual([["upper", ["weights"]]])
    expect(sceneOn(bench).mounts.upper).toEqual({ atMm: [40, 170, 0], pitchDeg: 0, yawDeg: 0 })
  })

  test("that carries a chain already adds to its end and leaves the mount where it is", () => {
    const bench = fullBench()
    done(bench, "upper rod added", () => addChain.run(bench, { mount: "upper", part: "rod" }))
    expect(sceneOn(bench).rig.map(({ chain }) => chain.length)).toEqual([6, 2, 2, 2])
    expect(sceneOn(bench).mounts.upper).toEqual(fullScene().mounts.upper)
  })
})

describe("removing", () => {
  test("takes away an element, an accessory or an arm, and nothing else", () => {
    const bench = fullBench()
    done(bench, "rod removed", () => removeItem.run(bench, { address: [...FRONT, 2], name: "rod" }))
    done(bench, "plunger removed", () => removeItem.run(bench, { address: ["accessories", 1], name: "plunger" }))
    done(bench, "left arm removed", () => removeItem.run(bench, { address: [...VBAR, "left"], name: "left arm" }))
    expect(kinds(front(bench))).toEqual(["extender", "vbar", "damper", "weights", "weights"])
    expect(sceneOn(bench).accessories.map(({ name }) => name)).toEqual(["sight", "sight"])
    const vbar = front(bench)[1]
    expect(vbar?.part === "vbar" && Object.keys(vbar).filter((key) => key === "left" || key === "right")).toEqual([
      "right",
    ])
  })

  test("the last element of a mount leaves the mount bare, the last of an arm leaves the arm", () => {
    const bench = fullBench()
    done(bench, "weights removed", () => removeItem.run(bench, { address: ["rig", 1, "chain", 0], name: "weights" }))
    expect(sceneOn(bench).rig.map(({ mount }) => mount)).toEqual(["front", "lower", "back"])
    for (const name of ["rod", "weights"]) {
      removeItem.run(bench, { address: [...VBAR, "left", "chain", 0], name })
    }
    expect(front(bench)[1]).toMatchObject({ left: { splayDeg: 35, chain: [] } })
  })

  test("what is not there, or what a bow cannot be without, is refused and the very same state stays", () => {
    const bench = fullBench()
    const before = bench.store.getState()
    for (const address of [
      [...FRONT, 6],
      ["accessories", 3],
      [...FRONT, 2, "left"],
    ]) {
      expect(firstError(removeItem.run(bench, { address, name: "x" }))?.code).toBe("not-allowed")
    }
    expect(firstError(removeItem.run(bench, { address: ["bow", "riser"], name: "riser" }))?.path).toBe("bow.riser")
    expect(bench.store.getState()).toBe(before)
  })
})

describe("moving", () => {
  test("puts an element so many places on or back", () => {
    const bench = fullBench()
    done(bench, "rod moved", () => moveItem.run(bench, { address: [...FRONT, 2], by: 2, name: "rod" }))
    expect(kinds(front(bench))).toEqual(["extender", "vbar", "damper", "weights", "rod", "weights"])
    done(bench, "rod moved", () => moveItem.run(bench, { address: [...FRONT, 4], by: -4, name: "rod" }))
    expect(kinds(front(bench))).toEqual(["rod", "extender", "vbar", "damper", "weights", "weights"])
    done(bench, "sight moved", () => moveItem.run(bench, { address: ["accessories", 0], by: 1, name: "sight" }))
    expect(sceneOn(bench).accessories.map(({ name }) => name)).toEqual(["plunger", "sight", "sight"])
  })

  test("past either end of the list does nothing", () => {
    const bench = fullBench()
    expect(moveItem.run(bench, { address: [...FRONT, 0], by: -1, name: "extender" })).toEqual(DONE)
    expect(moveItem.run(bench, { address: [...FRONT, 5], by: 1, name: "weights" })).toEqual(DONE)
    expect(stepsOn(bench)).toEqual([])
  })
})

describe("duplicating", () => {
  test("puts an equal copy after the element, all it carries included, that changes by itself", () => {
    const bench = fullBench()
    done(bench, "V-bar duplicated", () => duplicateItem.run(bench, { address: VBAR, name: "V-bar" }))
    expect(kinds(front(bench)).slice(0, 4)).toEqual(["extender", "vbar", "vbar", "rod"])
    expect(front(bench)[2]).toEqual(front(bench)[1])
    bench.change("one arm", (draft) => {
      Object.assign((draft.rig[0]!.chain[2] as { left: object }).left, { splayDeg: 73 })
    })
    expect(front(bench)[1]).toMatchObject({ left: { splayDeg: 35 } })
  })

  test("is refused by name once the list is full", () => {
    const bench = fullBench()
    let last: Result<void> = { ok: true, value: undefined }
    for (let count = 6; count <= 40 && last.ok; count++) {
      last = duplicateItem.run(bench, { address: [...FRONT, 5], name: "weights" })
    }
    expect(front(bench)).toHaveLength(40)
    expect(firstError(last)).toMatchObject({ path: "rig[0].chain", message: "too long; at most 40 entries" })
  })
})

describe("renaming", () => {
  test("gives a rig part its own label and an empty one takes it away", () => {
    const bench = fullBench()
    const label = () => (front(bench)[2] as { label?: string }).label
    done(bench, "renamed", () => renameItem.run(bench, { address: [...FRONT, 2], name: "  the long one " }))
    expect(label()).toBe("the long one")
    done(bench, "renamed", () => renameItem.run(bench, { address: [...FRONT, 2], name: " " }))
    expect(front(bench)[2]).not.toHaveProperty("label")
  })

  test("names an accessory, which cannot be without a name", () => {
    const bench = fullBench()
    done(bench, "renamed", () => renameItem.run(bench, { address: ["accessories", 1], name: "button" }))
    expect(sceneOn(bench).accessories[1]?.name).toBe("button")
    expect(firstError(renameItem.run(bench, { address: ["accessories", 1], name: "  " }))).toMatchObject({
      path: "accessories[1].name",
      message: "is empty; a name is needed",
    })
    expect(sceneOn(bench).accessories[1]?.name).toBe("button")
  })

  test("refuses a name longer than the file takes", () => {
    const bench = fullBench()
    const long = renameItem.run(bench, { address: [...FRONT, 2], name: "x".repeat(121) })
    expect(firstError(long)).toMatchObject({
      path: "rig[0].chain[2].label",
      message: "too long; at most 120 characters",
    })
  })
})

test("moving, duplicating and renaming what is not in a list are refused and the very same state stays", () => {
  const bench = fullBench()
  const before = bench.store.getState()
  const acts = [
    (address: (string | number)[]) => moveItem.run(bench, { address, by: -1, name: "x" }),
    (address: (string | number)[]) => duplicateItem.run(bench, { address, name: "x" }),
    (address: (string | number)[]) => renameItem.run(bench, { address, name: "x" }),
  ]
  for (const address of [
    [...FRONT, 6],
    ["rig", 5, "chain", 0],
    [...VBAR, "left"],
    ["accessories", 3],
  ]) {
    for (const act of acts) expect(firstError(act(address))?.message).toBe("nothing stands there in this scene")
  }
  expect(bench.store.getState()).toBe(before)
})

describe("adding an arm", () => {
  test("makes it like the other one", () => {
    const bench = fullBench()
    const left = (front(bench)[1] as { left: object }).left
    removeItem.run(bench, { address: [...VBAR, "right"], name: "right arm" })
    done(bench, "right arm added", () => addArm.run(bench, { vbar: VBAR, side: "right" }))
    expect(front(bench)[1]).toMatchObject({ left, right: left })
  })

  test("to a bare V-bar brings a side rod with weights", () => {
    const bench = fullBench()
    addPart.run(bench, { chain: FRONT, part: "vbar" })
    done(bench, "left arm added", () => addArm.run(bench, { vbar: [...FRONT, 6], side: "left" }))
    expect(front(bench)[6]).toMatchObject({ left: { splayDeg: 40, chain: [{ part: "rod" }, { part: "weights" }] } })
  })

  test("is refused where one is already, and on what is no V-bar", () => {
    const bench = fullBench()
    const before = bench.store.getState()
    expect(firstError(addArm.run(bench, { vbar: VBAR, side: "left" }))).toEqual({
      code: "not-allowed",
      path: "rig[0].chain[1].left",
      message: "this side has its arm already",
    })
    expect(firstError(addArm.run(bench, { vbar: [...FRONT, 2], side: "left" }))?.path).toBe("rig[0].chain[2]")
    expect(firstError(addArm.run(bench, { vbar: [...FRONT, 9], side: "left" }))?.path).toBe("rig[0].chain[9]")
    expect(bench.store.getState()).toBe(before)
  })
})

describe("the extender switch", () => {
  test("takes the first extender away, and puts one at the root where there is none", () => {
    const bench = fullBench()
    done(bench, "extender removed", () => toggleExtender.run(bench, { chain: FRONT }))
    expect(kinds(front(bench))).toEqual(["vbar", "rod", "damper", "weights", "weights"])
    done(bench, "extender added", () => toggleExtender.run(bench, { chain: FRONT }))
    expect(kinds(front(bench))).toEqual(["extender", "vbar", "rod", "damper", "weights", "weights"])
  })

  test("works on an arm and is refused where there is no chain", () => {
    const bench = fullBench()
    done(bench, "extender added", () => toggleExtender.run(bench, { chain: [...VBAR, "left", "chain"] }))
    expect(front(bench)[1]).toMatchObject({ left: { chain: [{ part: "extender" }, { part: "rod" }, {}] } })
    expect(firstError(toggleExtender.run(bench, { chain: ["rig", 4, "chain"] }))?.path).toBe("rig[4].chain")
  })
})
