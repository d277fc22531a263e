import { twinKey } from "../../scene/address"
import { type PathStep, pathText, type SceneError } from "../../scene/errors"
import { evaluate } from "../../scene/evaluate"
import { figuresOf } from "../../scene/figures"
import { rangeMessage } from "../../scene/messages"
import { validateScene } from "../../scene/parse"
import type { Scene } from "../../scene/schema"
import { slotNamed } from "../../scene/slots"
import { withValues } from "../../scene/suggest"
import { lessonFaults } from "../../words/lessonFaults"
import type { SetupChange } from "./schema"
import type { Setup } from "./placeholders"

/** Something is wrong at a place of the lesson; ends the staging of a step. */
export class Fault extends Error {
  readonly errors: readonly SceneError[]

  constructor(errors: readonly SceneError[]) {
    super(errors[0]?.message)
    this.errors = errors
  }
}

export const faultAt = (path: readonly PathStep[], message: string): Fault =>
  new Fault([{ code: "not-allowed", path: pathText(path), message }])

/**
 * The setup that a step describes: one of the lesson's scenes, or else `from`, with some of its numbers set anew. What
 * is set on one arm of a V-bar holds for the other too, unless that is set as well.
 *
 * @param path where the description stands in the lesson
 * @throws Fault where it describes no valid scene
 */
export function changedSetup(
  { scene, set = {} }: SetupChange,
  from: Scene | null,
  scenes: ReadonlyMap<string, Scene>,
  path: readonly PathStep[],
): Setup {
  const named = scene === undefined ? from : scenes.get(scene)
  if (named === null) throw faultAt([...path, "scene"], lessonFaults.sceneMissing)
  if (named === undefined) {
    const known = [...scenes.keys()].join(", ")
    throw faultAt([...path, "scene"], lessonFaults.sceneUnknown(scene!, known))
  }
  const changes = Object.entries(set).flatMap(([key, value]) => {
    const twin = checkedTwin(named, key, value, [...path, "set", key])
    return twin === null || Object.hasOwn(set, twin)
      ? [{ key, value }]
      : [
          { key, value },
          { key: twin, value },
        ]
  })
  const valid = validateScene(withValues(named, changes))
  const evaluation = valid.ok ? evaluate(valid.value) : valid
  if (!valid.ok || !evaluation.ok) {
    const errors = evaluation.ok ? [] : evaluation.errors
    const at = pathText(path)
    throw new Fault(
      errors.map((error) => ({ ...error, path: error.path === "" ? at : lessonFaults.within(at, error.path) })),
    )
  }
  return { scene: valid.value, figures: figuresOf(evaluation.value) }
}

/** The key of the same number on a V-bar's other arm, if there is one; throws where the value cannot be set. */
function checkedTwin(scene: Scene, key: string, value: number, path: readonly PathStep[]): string | null {
  const slot = slotNamed(scene, key)
  if (slot === undefined) throw faultAt(path, lessonFaults.noNumber)
  const { field, address } = slot
  if (value < field.min || value > field.max || (field.whole && !Number.isInteger(value))) {
    throw faultAt(path, rangeMessage(field, value))
  }
  const twin = address[0] === "rig" ? twinKey(key) : null
  return twin !== null && slotNamed(scene, twin) !== undefined ? twin : null
}
