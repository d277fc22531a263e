import { describe, expect, test } from "vitest"
import { editChains } from "../../src/commands/editChains"
import type { Result } from "../../src/scene/errors"
import type { Element } from "../../src/scene/schema"
import { newElement } from "../../src/scene/templates"
import type { Bench } from "../../src/state/bench"
import { fullBench, sceneOn } from "../state/benches"
import { done } from "./oneStep"

const FRONT = ["rig", 0, "chain"]
const VBAR = [...FRONT, 1]

const kinds = (chain: readonly Element[]) => chain.map(({ part }) => part)
const front = (bench: Bench) => sceneOn(bench).rig[0]!.chain
const firstError = (result: Result<void>) => (result.ok ? undefined : result.errors[0])

describe("editing chains", () => {
  const put = newElement.extender
  const left = { chain: [...VBAR, "left", "chain"], path: "front/vbar/left", index: 0 }
  const right = { chain: [...VBAR, "right", "chain"], path: "front/vbar/right", index: 0 }

  test("puts in and takes out parts of several chains in one step", () => {
    const bench = fullBench()
    const edits = [
      { ...left, put },
      { ...right, put },
      { chain: FRONT, path: "front", index: 0, put: null },
    ]
    const before = front(bench)
    done(bench, "by hand", () => editChains.run(bench, { label: "by hand", edits }))
    const [vbar, ...rest] = front(bench)
    expect([vbar?.part, ...kinds(rest)]).toEqual(kinds(before.slice(1)))
    for (const side of ["left", "right"] as const) {
      expect(vbar?.part === "vbar" && vbar[side]?.chain[0]).toEqual(put)
    }
  })

  test("does none of them where a chain is not there or the scene would not stand", () => {
    const bench = fullBench()
    const before = sceneOn(bench)
    const nowhere = { chain: ["rig", 7, "chain"], path: "back", index: 0, put }
    expect(firstError(editChains.run(bench, { label: "no", edits: [{ ...left, put }, nowhere] }))?.path).toBe(
      "rig[7].chain",
    )
    const wrong = { ...right, put: { ...put, innerMm: put.outerMm + 5 } }
    expect(firstError(editChains.run(bench, { label: "no", edits: [{ ...left, put }, wrong] }))?.path).toContain(
      "right",
    )
    expect(sceneOn(bench)).toBe(before)
  })
})
