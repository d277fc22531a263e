import { expect, test } from "vitest"
import { partNames, partTitle } from "../../src/describe/partNames"
import { slotsOf } from "../../src/scene/slots"
import { newAccessory, newArm, newElement, newScene } from "../../src/scene/templates"

function fullScene() {
  const scene = newScene()
  const vbar = { ...newElement.vbar, left: newArm(), right: newArm() }
  scene.rig.push({
    mount: "front",
    chain: [
      { ...newElement.extender },
      vbar,
      { ...newElement.rod, label: "Club rod" },
      { ...newElement.weights },
      { ...newElement.weights },
    ],
  })
  scene.rig.push({ mount: "back", chain: [{ ...newElement.swing }, { ...newElement.vbar, left: newArm() }] })
  scene.accessories.push(newAccessory("sight"), newAccessory("sight"), newAccessory("rest"))
  return scene
}

test("a part is called by where it is and what it is", () => {
  const scene = fullScene()
  expect(partTitle(scene, "front/extender")).toBe("Front extender")
  expect(partTitle(scene, "front/weights#2")).toBe("Front weights 2")
  expect(partTitle(scene, "front/vbar")).toBe("Front V-bar")
  expect(partTitle(scene, "front/vbar/left/rod")).toBe("Left side rod")
  expect(partTitle(scene, "front/vbar/right/weights")).toBe("Right side weights")
  expect(partTitle(scene, "front/vbar/left")).toBe("Left arm")
  expect(partTitle(scene, "back/swing")).toBe("Back swing weight")
  expect(partTitle(scene, "back/vbar/left/rod")).toBe("Back left side rod")
  expect(partTitle(scene, "mounts/lower")).toBe("Lower mount")
  expect(partTitle(scene, "accessories/sight#2")).toBe("sight 2")
})

test("a label given by the coach goes before every other name", () => {
  expect(partTitle(fullScene(), "front/rod")).toBe("Club rod")
  expect(partNames(fullScene()).get("front/rod")?.short).toBe("Club rod")
})

test("under a heading that says where, only the kind is needed", () => {
  expect(partNames(fullScene()).get("front/vbar/left/rod")?.short).toBe("Rod")
  expect(partNames(fullScene()).get("front/weights#2")?.short).toBe("Weights 2")
})

test("everything that owns a number has a name", () => {
  const scene = fullScene()
  const unnamed = slotsOf(scene).filter(({ owner }) => !partNames(scene).has(owner))
  expect(unnamed.map(({ owner }) => owner)).toEqual([])
})
