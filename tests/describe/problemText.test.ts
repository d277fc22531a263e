import { expect, test } from "vitest"
import { errorText } from "../../src/describe/errorText"
import { problemText } from "../../src/describe/problemText"
import type { SceneError } from "../../src/scene/errors"
import { evaluate } from "../../src/scene/evaluate"
import { relationErrors } from "../../src/scene/relations"
import type { Scene } from "../../src/scene/schema"
import { newElement, newScene } from "../../src/scene/templates"
import { recurveBow, smallestDocument } from "../scene/documents"
import { sceneOf } from "../scene/scenes"
import { defaultPreferences } from "../../src/state/preferences"

const metric = defaultPreferences
const inches = { massUnit: "oz", lengthUnit: "in", forceUnit: "lbf" } as const

function changed(change: (scene: Scene) => void, scene = newScene()): Scene {
  change(scene)
  return scene
}
const inBoth = (scene: Scene, errors: readonly SceneError[]) =>
  [metric, inches].map((preferences) => problemText({ scene, preferences }, errors).replaceAll("\u00a0", " "))

test("a refused number is placed by the names of the page and said in the units chosen there", () => {
  const scene = changed(({ rig }) => rig.push({ mount: "front", chain: [{ ...newElement.rod, innerMm: 23 }] }))
  expect(inBoth(scene, relationErrors(scene))).toEqual([
    "Front rod, inner diameter: 23 given; less than the outer diameter, 18 mm, is needed.",
    "Front rod, inner diameter: 0.9055 given; less than the outer diameter, 0.7087 in, is needed.",
  ])
})

test("a rule between the numbers of one list is placed by what they are together", () => {
  const scene = changed(({ target }) => {
    target.forwardMm = [83, -71]
    target.netLiftNm = [3, 2]
  })
  expect(inBoth(scene, relationErrors(scene))).toEqual([
    "Target, balance point forward: 83 to −71 given; the smaller number comes first. Target, net lift at full draw: 3 to 2 given; the smaller number comes first.",
    "Target, balance point forward: 3.2677 to −2.7953 given; the smaller number comes first. Target, net lift at full draw: 26.5522 to 17.7015 given; the smaller number comes first.",
  ])
})

test("a length that a solver found is cut to the decimals shown, so that the one named as working does work", () => {
  const drawn = (mm: number) =>
    changed(
      ({ bow }) => {
        bow.drawLengthMm = mm
      },
      sceneOf({ ...smallestDocument(), bow: recurveBow() }),
    )
  const scene = drawn(1200)
  const refused = evaluate(scene)
  if (refused.ok) throw new Error("no such limb is drawn so far")
  const [inMm, inInches] = inBoth(scene, refused.errors)
  const [, whole] = inMm!.match(/^Bow, draw length: .* draw of 1200 mm.*; it can be drawn to (\d+) mm\.$/) ?? []
  const [, hundredths] =
    inInches!.match(/^Bow, draw length: .* draw of 47\.24 in.*; it can be drawn to (\d+\.\d+) in\.$/) ?? []
  const nearest = refused.errors[0]!.words!.find((word) => typeof word !== "string" && word.round === "down")
  if (nearest === undefined || typeof nearest === "string") throw new Error("no nearest draw is named")
  expect(Number(whole)).toBe(Math.floor(nearest.value))
  const past = nearest.value - Number(hundredths) * 25.4
  expect(past).toBeGreaterThanOrEqual(0)
  expect(past).toBeLessThan(0.254)
  for (const mm of [Number(whole), Number(hundredths) * 25.4]) expect(evaluate(drawn(mm)).ok).toBe(true)
})

test("an error that is about no number keeps its path and words", () => {
  const error = { code: "contradiction", path: "rig[1].mount", message: "one chain a mount" } as const
  const page = { scene: newScene(), preferences: metric }
  expect(problemText(page, [error])).toBe("rig[1].mount: one chain a mount.")
  expect(problemText(page, [{ ...error, message: "It is one sentence." }, error])).toBe(
    "rig[1].mount: It is one sentence. rig[1].mount: one chain a mount.",
  )
  expect(problemText(page, [{ ...error, path: "" }])).toBe("one chain a mount.")
  expect(errorText(error, inches)).toBe("one chain a mount")
})

test("an entry of the readings or of the log is placed by its number there", () => {
  const scene = newScene()
  const wrong = (path: string): SceneError[] => [{ code: "not-allowed", path, message: "0 given" }]
  expect(problemText({ scene, preferences: metric }, wrong("measurements[2].massG"))).toBe("Reading 3: 0 given.")
  expect(problemText({ scene, preferences: metric }, wrong("log[0].rig[0].mount"))).toBe("Setup 1: 0 given.")
})
