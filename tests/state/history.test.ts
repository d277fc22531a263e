import { enablePatches, produceWithPatches } from "immer"
import { describe, expect, test } from "vitest"
import type { Scene } from "../../src/scene/schema"
import { newScene } from "../../src/scene/templates"
import type { Recipe } from "../../src/state/bench"
import { type Entry, join, NO_HISTORY, remember, stepBack, stepForward } from "../../src/state/history"

enablePatches()

function step(scene: Scene, label: string, recipe: Recipe): { scene: Scene; entry: Entry } {
  const [next, forward, backward] = produceWithPatches(scene, recipe)
  return { scene: next, entry: { label, forward, backward } }
}

const brace =
  (braceHeightMm: number): Recipe =>
  (draft) => {
    draft.bow.braceHeightMm = braceHeightMm
  }
const withSight: Recipe = (draft) => {
  draft.accessories.push({ name: "sight", massG: 210, centreMm: [130, 125, 29] })
}
const withScope: Recipe = (draft) => {
  draft.accessories.push({ name: "scope", massG: 57, centreMm: [170, 131, 27] })
}
const firstOut: Recipe = (draft) => {
  draft.accessories.splice(0, 1)
}

/** The scene after two steps joined to one, forward from the first scene and back from the last. */
function joined(first: Recipe, second: Recipe) {
  const start = newScene()
  const one = step(start, "one", first)
  const two = step(one.scene, "two", second)
  const entry = join(one.entry, two.entry)
  const past = remember(NO_HISTORY, entry)
  const back = stepBack(past, two.scene)!
  const again = stepForward(back.history, back.scene)!
  return { start, end: two.scene, entry, back: back.scene, again: again.scene }
}

describe("two steps joined to one", () => {
  test.each<[string, Recipe, Recipe]>([
    ["the same number twice", brace(211), brace(217)],
    [
      "two different numbers",
      brace(211),
      (draft) => {
        draft.bow.nockHeightMm = 53
      },
    ],
    ["a list that grows twice", withSight, withScope],
    ["a list that grows and shrinks", withSight, firstOut],
    [
      "two entries, of which the first then goes",
      (draft) => {
        withSight(draft)
        withScope(draft)
      },
      firstOut,
    ],
    [
      "a key that comes and then changes",
      (draft) => {
        draft.target.massMaxG = 2900
      },
      (draft) => {
        draft.target.massMaxG = 3100
      },
    ],
    [
      "a key that goes and then comes back",
      (draft) => void delete draft.target.forwardMm,
      (draft) => {
        draft.target.forwardMm = [23, 57]
      },
    ],
  ])("lead from the first scene to the last and back: %s", (_what, first, second) => {
    const { start, end, back, again } = joined(first, second)
    expect(back).toEqual(start)
    expect(again).toEqual(end)
  })

  test("are no larger than one where both set the same number, so that a long drag stays small", () => {
    let { scene, entry } = step(newScene(), "drag", brace(201))
    for (let mm = 202; mm <= 257; mm++) {
      const next = step(scene, "drag", brace(mm))
      scene = next.scene
      entry = join(entry, next.entry)
    }
    expect(entry.forward).toEqual([{ op: "replace", path: ["bow", "braceHeightMm"], value: 257 }])
    expect(entry.backward).toEqual([{ op: "replace", path: ["bow", "braceHeightMm"], value: 220 }])
  })
})

describe("the history", () => {
  test("has nothing to step to at either end", () => {
    expect(stepBack(NO_HISTORY, newScene())).toBeNull()
    expect(stepForward(NO_HISTORY, newScene())).toBeNull()
  })

  test("forgets what had been undone once something new is done", () => {
    const one = step(newScene(), "one", brace(211))
    const back = stepBack(remember(NO_HISTORY, one.entry), one.scene)!
    expect(back.history.future.map(({ label }) => label)).toEqual(["one"])
    const two = step(back.scene, "two", brace(217))
    expect(remember(back.history, two.entry)).toEqual({ past: [two.entry], future: [] })
  })

  test("undoes the last step first and redoes the first undone step last", () => {
    const one = step(newScene(), "one", brace(211))
    const two = step(one.scene, "two", brace(217))
    const history = remember(remember(NO_HISTORY, one.entry), two.entry)
    const back = stepBack(history, two.scene)!
    const further = stepBack(back.history, back.scene)!
    expect([back.entry.label, further.entry.label]).toEqual(["two", "one"])
    expect(further.scene.bow.braceHeightMm).toBe(220)
    expect(further.history.future.map(({ label }) => label)).toEqual(["one", "two"])
    const forward = stepForward(further.history, further.scene)!
    expect([forward.entry.label, forward.scene.bow.braceHeightMm]).toEqual(["one", 211])
  })

  test("keeps the last 500 steps", () => {
    const { entry } = step(newScene(), "", brace(211))
    let history = NO_HISTORY
    for (let count = 1; count <= 507; count++) history = remember(history, { ...entry, label: `step ${count}` })
    expect(history.past).toHaveLength(500)
    expect(history.past[0]?.label).toBe("step 8")
    expect(history.past.at(-1)?.label).toBe("step 507")
  })
})
