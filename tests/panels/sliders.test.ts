import { describe, expect, test } from "vitest"
import { sliderGroups } from "../../src/panels/sliders/groups"
import { slotNamed } from "../../src/scene/slots"
import { newArm, newElement, newScene } from "../../src/scene/templates"

function rigged() {
  const scene = newScene()
  const vbar = { ...newElement.vbar, left: newArm(), right: { ...newArm(), splayDeg: 155 } }
  scene.rig.push({ mount: "front", chain: [{ ...newElement.extender }, vbar, { ...newElement.rod, lengthMm: 1203 }] })
  scene.rig.push({ mount: "back", chain: [{ ...newElement.swing }] })
  return scene
}

describe("the sliders", () => {
  test("stand under the pose first, then each chain, the bow last", () => {
    expect(sliderGroups(rigged()).map(({ title }) => title)).toEqual([
      "How it is held",
      "Front mount",
      "Left arm",
      "Right arm",
      "Back mount",
      "Bow and archer",
    ])
  })

  test("each move one number of the scene, within its range and over its present value", () => {
    const scene = rigged()
    for (const { key, from, to } of sliderGroups(scene).flatMap(({ sliders }) => sliders)) {
      const slot = slotNamed(scene, key)!
      expect(from).toBeGreaterThanOrEqual(slot.field.min)
      expect(to).toBeLessThanOrEqual(slot.field.max)
      expect(slot.value).toBeGreaterThanOrEqual(from)
      expect(slot.value).toBeLessThanOrEqual(to)
      expect(to).toBeGreaterThan(from)
    }
  })

  test("are there for every length, count, angle and pose a coach turns", () => {
    const keys = sliderGroups(rigged()).flatMap(({ sliders }) => sliders.map(({ key }) => key))
    for (const key of [
      "front/rod:lengthMm",
      "front/extender:lengthMm",
      "front/vbar/left:splayDeg",
      "front/vbar/right:droopDeg",
      "front/vbar/left/weights:count",
      "back/swing:bobMassG",
      "pose:draw",
      "bow:drawWeightLbf",
    ]) {
      expect(keys).toContain(key)
    }
  })
})
