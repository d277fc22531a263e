import type { SceneError } from "../scene/errors"
import type { Scene } from "../scene/schema"
import type { FileRules } from "../state/check"

/**
 * Rules that read a scene's readings and log only when they are other lists than the last that were found right: a drag
 * asks at every frame, and a season's log takes longer to read than all the rest.
 */
export function sparingRules(whole: (scene: Scene) => readonly SceneError[]): FileRules {
  const right = new WeakSet<object>()
  return (scene) => {
    const { log, measurements, ...rest } = scene
    const lists = [log, measurements].filter((list) => list !== undefined)
    if (lists.every((list) => right.has(list))) return whole(rest)
    const errors = whole(scene)
    if (errors.length === 0) for (const list of lists) right.add(list)
    return errors
  }
}
