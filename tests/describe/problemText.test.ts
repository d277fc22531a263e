import { expect, test } from "vitest"
import { problemText } from "../../src/describe/problemText"
import { validateScene } from "../../src/scene/parse"
import { newElement, newScene } from "../../src/scene/templates"

test("a refused number is placed by the names of the page, not by its path in the file", () => {
  const scene = newScene()
  scene.rig.push({ mount: "front", chain: [{ ...newElement.rod, innerMm: 23 }] })
  const refused = validateScene(scene)
  expect(refused.ok).toBe(false)
  if (!refused.ok) {
    expect(problemText(scene, refused.errors)).toBe(
      "Front rod, inner diameter: 23 given; less than the outer diameter, 18 mm, is needed.",
    )
  }
})

test("an error that is about no number keeps its path and words", () => {
  const error = { code: "contradiction", path: "rig[1].mount", message: "one chain a mount" } as const
  expect(problemText(newScene(), [error])).toBe("rig[1].mount: one chain a mount.")
  expect(problemText(newScene(), [{ ...error, path: "" }])).toBe("one chain a mount.")
})
