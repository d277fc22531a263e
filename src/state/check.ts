import type { Result, SceneError } from "../scene/errors"
import { type Evaluation, evaluate } from "../scene/evaluate"
import { relationErrors } from "../scene/relations"
import type { Scene } from "../scene/schema"

/** What a scene must keep to; no errors when it does. */
export type FileRules = (scene: Scene) => readonly SceneError[]

/**
 * The rules between fields. They suffice for setting numbers, whose own ranges the commands check; whoever also adds
 * and removes parts gives the bench the whole file's rules (`src/files/fileRules.ts`).
 */
export const standingRules: FileRules = relationErrors

/** A scene the bench may hold: it keeps the rules, and its limbs can take its shape. */
export function checkScene(scene: Scene, rules: FileRules = standingRules): Result<Evaluation> {
  const errors = rules(scene)
  return errors.length > 0 ? { ok: false, errors } : evaluate(scene)
}
