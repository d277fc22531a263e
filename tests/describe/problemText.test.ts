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

test("a rule between the numbers of one list is placed by what they are together", () => {
  const scene = newScene()
  scene.target.forwardMm = [83, 71]
  const refused = validateScene(scene)
  if (refused.ok) throw new Error("a target from 83 to 71 is no target")
  expect(problemText(scene, refused.errors)).toBe(
    "Target, balance point forward: 83 to 71 given; the smaller number comes first.",
  )
})

test("an error that is about no number keeps its path and words", () => {
  const error = { code: "contradiction", path: "rig[1].mount", message: "one chain a mount" } as const
  expect(problemText(newScene(), [error])).toBe("rig[1].mount: one chain a mount.")
  expect(problemText(newScene(), [{ ...error, message: "It is one sentence." }, error])).toBe(
    "rig[1].mount: It is one sentence. rig[1].mount: one chain a mount.",
  )
  expect(problemText(newScene(), [{ ...error, path: "" }])).toBe("one chain a mount.")
})
