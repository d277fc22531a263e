import { Group } from "three"
import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import { mountDirection } from "../../core/rig"
import { along, type Vec3 } from "../../core/solids"
import { MM, metres } from "../../scene/assemble"
import { mountNames } from "../../scene/mountNames"
import type { Looks } from "../looks"
import type { Drawn } from "../picture"
import { layAlong, layBetween, mesh, putAt } from "../shapes/placing"
import { riserSections } from "../../picture/outline/riser"
import { unitBox, unitBoxEdges, unitSphere, unitTube } from "../shapes/solids"
import type { PartDrawing } from "./drawing"

/** A box of the given size, edges drawn; a point is a ball as big as its mass would be in aluminium. */
export function accessoryPart(looks: Looks): PartDrawing {
  const object = new Group()
  const body = mesh(unitBox, looks.surface("accessory"))
  const edges = mesh(unitBoxEdges, looks.stroke("ink-soft", 1.2, 0.7))
  const ball = mesh(unitSphere, looks.surface("accessory"))
  edges.raycast = () => {}
  object.add(body, edges, ball)
  return {
    object,
    update(part, { evaluation: { scene } }) {
      const size = scene.accessories[Number(part.address[1])]?.sizeMm
      ball.visible = size === undefined
      body.visible = edges.visible = size !== undefined
      putAt(ball, part.centre)
      ball.scale.setScalar(ballRadius(part.mass))
      if (size === undefined) return
      for (const each of [body, edges]) {
        putAt(each, part.centre)
        // A box may be flat; scaling by nothing would leave it without a surface to light.
        each.scale.set(...(size.map((edge) => Math.max(edge * MM, 1e-4)) as [number, number, number]))
      }
    },
  }
}

const ALUMINIUM = 2700
const ballRadius = (mass: number): number =>
  Math.min(0.03, Math.max(0.007, Math.cbrt((3 * mass) / (4 * Math.PI * ALUMINIUM))))

const BUSHING = { radius: 0.0075, length: 0.007, sunk: 0.004 }

/** A threaded bushing at each mount, used or not, on a post where the mount stands off the riser. */
export function mountsDrawing(looks: Looks): Drawn {
  const object = new Group()
  const bushings = mountNames.map(() => mesh(unitTube, looks.surface("metal")))
  const posts = mountNames.map(() => mesh(unitTube, looks.surface("riser")))
  object.add(...bushings, ...posts)
  mountNames.forEach((name, index) => {
    bushings[index]!.userData.path = posts[index]!.userData.path = `mounts/${name}`
  })
  let drawn: unknown = null
  return {
    object,
    update({ evaluation: { scene } }) {
      if (drawn === scene.mounts) return
      drawn = scene.mounts
      const sections = riserSections(scene)
      mountNames.forEach((name, index) => {
        const mount = scene.mounts[name]
        bushings[index]!.visible = posts[index]!.visible = mount !== undefined
        if (mount === undefined) return
        const at = metres(mount.atMm)
        const direction = mountDirection(mount.pitchDeg * DEGREE, mount.yawDeg * DEGREE)
        layAlong(bushings[index]!, along(at, direction, -BUSHING.sunk), direction, BUSHING.length, BUSHING.radius)
        const nearest = sections.reduce((a, b) => (Math.abs(b.y - at[1]) < Math.abs(a.y - at[1]) ? b : a))
        const rooted: Vec3 = [(nearest.back + nearest.front) / 2, nearest.y, (nearest.left + nearest.right) / 2]
        layBetween(posts[index]!, rooted, at, 0.006)
      })
    },
  }
}
