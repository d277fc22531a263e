import { multiply } from "../../core/solids"
import { pullLine } from "../../picture/pull"
import type { Looks } from "../looks"
import type { Drawn } from "../picture"
import { layBetween, mesh } from "../shapes/placing"
import { unitStroke } from "../shapes/solids"

/** The line of pull: from the nock back to where the draw elbow's handle stands. World axes. */
export function pullDrawing(looks: Looks): Drawn {
  const object = mesh(unitStroke, looks.stroke("ink-soft", 1.6, 0.75))
  object.raycast = () => {}
  return {
    object,
    update({ evaluation: { scene, now } }) {
      const line = pullLine(scene, now.limbs)
      if (line === null) object.visible = false
      else layBetween(object, multiply(now.rotation, line[0]), multiply(now.rotation, line[1]))
    },
  }
}
