import type { Result } from "../scene/errors"
import { type Evaluation, evaluate } from "../scene/evaluate"
import { validateScene } from "../scene/parse"
import type { Scene } from "../scene/schema"

/** A scene the bench may hold: valid as a file, and with limbs that can take its shape. */
export function checkScene(scene: Scene): Result<Evaluation> {
  const valid = validateScene(scene)
  return valid.ok ? evaluate(scene) : valid
}
