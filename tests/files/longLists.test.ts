import { expect, test } from "vitest"
import { sparingRules } from "../../src/files/longLists"
import type { SceneError } from "../../src/scene/errors"
import type { Scene } from "../../src/scene/schema"
import { measuredDocument } from "../scene/measure/documents"
import { sceneOf } from "../scene/scenes"

const scene = sceneOf(measuredDocument())
const error: SceneError = { code: "not-allowed", path: "log[0]", message: "wrong" }

test("lists found right are not read again until they are others, while the rest always is", () => {
  const asked: Scene[] = []
  const rules = sparingRules((given) => {
    asked.push(given)
    return []
  })
  const dragged = { ...scene, name: "dragged" }
  const noted = { ...dragged, log: [...scene.log!] }
  for (const each of [scene, dragged, noted, noted]) expect(rules(each)).toEqual([])
  expect(asked.map(({ log, measurements }) => [log !== undefined, measurements !== undefined])).toEqual([
    [true, true],
    [false, false],
    [true, true],
    [false, false],
  ])
  expect(asked[1]).toMatchObject({ name: "dragged", rig: scene.rig })
})

test("lists found wrong are read every time", () => {
  const rules = sparingRules((given) => (given.log === undefined ? [] : [error]))
  expect(rules(scene)).toEqual([error])
  expect(rules(scene)).toEqual([error])
})
