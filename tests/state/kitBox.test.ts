import { expect, test } from "vitest"
import { emptyKit } from "../../src/scene/kit"
import { createKitBox, keptKit } from "../../src/state/kitBox"

const kit = emptyKit("two")
const named = (name: string) => ({ ...kit, name })
const nameIn = (box: ReturnType<typeof createKitBox>) => box.store.getState().kit.name

test("changes and opened kits can be undone and redone, and a new change ends what could be redone", () => {
  const box = createKitBox(kit, "two.json")
  box.change(named("three"))
  box.open(named("five"), "five.json")
  expect(box.store.getState().fileName).toBe("five.json")
  box.undo()
  box.undo()
  box.undo()
  expect(nameIn(box)).toBe("two")
  box.redo()
  expect(nameIn(box)).toBe("three")
  box.change(named("seven"))
  box.redo()
  expect(nameIn(box)).toBe("seven")
  box.undo()
  expect(nameIn(box)).toBe("three")
})

test("a change that breaks a rule between fields is refused with its place and changes nothing", () => {
  const box = createKitBox(kit, null)
  const tube = { name: "wide", count: 2, massG: 50, lengthMm: 70, outerMm: 15, innerMm: 17 }
  const result = box.change({ ...kit, extenders: [tube] })
  expect(result.ok ? [] : result.errors.map(({ path }) => path)).toEqual(["extenders[0].innerMm"])
  expect(box.store.getState()).toMatchObject({ kit, past: [] })
})

test("every piece of the kit's state has its home", () => {
  expect(Object.keys(keptKit).sort()).toEqual(Object.keys(createKitBox(kit, null).store.getState()).sort())
})
