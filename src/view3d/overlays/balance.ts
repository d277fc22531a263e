import { Group } from "three"
import { multiply, type Vec3 } from "../../core/solids"
import { isTilted } from "../../describe/placeWords"
import { armLabel, SIDE_SAID } from "../../describe/pictureWords"
import { picture3d } from "../../words/picture3d"
import type { Labels } from "../labels"
import type { Looks } from "../looks"
import type { Drawn } from "../picture"
import { layBetween, mesh, putAt } from "../shapes/placing"
import { unitSphere, unitStroke } from "../shapes/solids"

/** Half the height of a dimension's end tick, m. */
const TICK = 0.012

/**
 * Where the bow balances: the centre of mass, the plumb line down from it, and its level distance to the grip's own plumb line
 * drawn as a dimension, first to the side where there is any, then forward. World axes.
 */
export function balanceOverlay(looks: Looks, labels: Labels): Drawn {
  const object = new Group()
  const line = (ink: "balance" | "ink-soft", width: number, opacity = 1) => {
    const made = mesh(unitStroke, looks.stroke(ink, width, opacity))
    made.renderOrder = 10
    object.add(made)
    return made
  }
  const plumb = line("balance", 2.5)
  const gripLine = line("ink-soft", 1.2, 0.8)
  const forward = line("balance", 2.5)
  const sideways = line("balance", 2)
  const ticks = [line("balance", 2.5), line("balance", 2.5)]
  const halo = mesh(unitSphere, looks.mark("panel"))
  const point = mesh(unitSphere, looks.mark("balance"))
  const grip = mesh(unitSphere, looks.mark("ink"))
  const gripCore = mesh(unitSphere, looks.mark("panel"))
  ;[grip, gripCore, halo, point].forEach((each, order) => {
    each.renderOrder = 11 + order
    object.add(each)
  })
  grip.scale.setScalar(0.008)
  gripCore.scale.setScalar(0.005)
  halo.scale.setScalar(0.0135)
  point.scale.setScalar(0.0105)

  return {
    object,
    update({ state, evaluation: { now }, ground, level }) {
      const { show } = state.preferences
      const centre = multiply(now.rotation, now.centre)
      putAt(halo, centre)
      putAt(point, centre)
      const [x, y, z] = centre
      const aside = Math.abs(z) * 1e3 >= SIDE_SAID
      for (const each of [plumb, gripLine, forward, sideways, ...ticks]) each.visible = show.plumb
      if (show.plumb) {
        layBetween(plumb, centre, [x, Math.min(ground, y), z])
        layBetween(gripLine, [0, 0, 0], [0, level - TICK, 0])
        layBetween(forward, [0, level, z], [x, level, z])
        layBetween(sideways, [0, level, 0], aside ? [0, level, z] : [0, level, 0])
        layBetween(ticks[0]!, [0, level - TICK, z], [0, level + TICK, z])
        layBetween(ticks[1]!, [x, level - TICK, z], [x, level + TICK, z])
      }
      const words = show.plumb && show.labels
      labels.keepClear("balance", centre, 9)
      labels.keepClear("grip", [0, 0, 0], 7)
      const text = armLabel(now.armForward * 1e3, now.armSide * 1e3, state.preferences, isTilted(now.pose))
      const at: Vec3 = [x, level, z]
      const where = x >= 0 ? "right" : "left"
      labels.put("arm", words ? { text, at, side: where, look: "arm", rank: 9 } : null)
      labels.put(
        "grip",
        show.labels ? { text: picture3d.grip, at: [0, 0, 0], side: "left", look: "plain", rank: 3 } : null,
      )
    },
  }
}
