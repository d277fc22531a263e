import { produce } from "immer"
import { expect, it } from "vitest"
import { pathText } from "../../src/scene/errors"
import { slotNamed, slotsOf } from "../../src/scene/slots"
import { hungDocument, sceneOf } from "./scenes"

const scene = sceneOf(hungDocument())

it("every number is found again by its key", () => {
  for (const slot of slotsOf(scene)) expect(slotNamed(scene, slot.key)).toBe(slot)
  expect(slotNamed(scene, "front/rod:colour")).toBeUndefined()
})

it("setting one number makes anew only the slots of what holds it", () => {
  const longer = produce(scene, (draft) => {
    const rod = draft.rig[0]!.chain.find(({ part }) => part === "rod")!
    Object.assign(rod, { lengthMm: 723 })
  })
  expect(slotNamed(longer, "front/rod:lengthMm")?.value).toBe(723)
  const changed = slotsOf(longer).filter((slot) => slot !== slotNamed(scene, slot.key))
  expect([...new Set(changed.map(({ owner }) => owner))]).toEqual(["front/rod"])
})

it("one object standing at two places of a document has slots at both", () => {
  const twice = produce(scene, (draft) => {
    const { chain } = draft.rig[0]!
    const index = chain.findIndex(({ part }) => part === "rod")
    chain.push(chain[index]!)
  })
  const addresses = ["front/rod:lengthMm", "front/rod#2:lengthMm"].map((key) =>
    pathText(slotNamed(twice, key)!.address),
  )
  expect(addresses[0]).not.toBe(addresses[1])
  // Taken away from the front, what stood behind it moves up: its slots say so.
  const moved = produce(twice, (draft) => void draft.rig[0]!.chain.shift())
  for (const slot of slotsOf(moved)) {
    const at = slot.address.reduce<unknown>((here, step) => (here as Record<string, unknown>)[step], moved)
    expect(at ?? slot.value).toBe(slot.value)
  }
})

it("every number of a swing weight says whether it is of the stem, the bob or the hinge", () => {
  const labels = slotsOf(scene)
    .filter(({ owner }) => owner === "back/swing")
    .map(({ label }) => label)
  expect(labels).toEqual(expect.arrayContaining(["stem length", "stem mass", "bob mass", "bob diameter", "bob length"]))
  expect(labels.filter((label) => !/^(stem|bob|hinge|stop) /.test(label))).toEqual([])
})
