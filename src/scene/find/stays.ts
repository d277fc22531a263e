import { FIRST, FORWARD_REACH, MASS, PITCH, REACHES, ROLL, SIDE_REACH, SUMS, YAW } from "../../core/find"
import { drawnBalance } from "../../core/balance"
import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import type { LimbResult } from "../../core/limbs"
import { compose, type MassProperties, type Vec3 } from "../../core/solids"
import { bareParts, GRAM, MM, type Part, rig } from "../assemble"
import { type LimbPlace, placeLimbs } from "../limbPlace"
import { success } from "../result"
import type { MountName, Scene } from "../schema"
import type { FindQuestion } from "./question"

/** What stays of the bow while its rig is built anew, as the engine wants it. */
export interface Stays {
  readonly base: Float64Array
  readonly arrowMass: number
  readonly drawn: { readonly forwardMoment: number; readonly lift: number }
  readonly reach: Float64Array
}

const LEVEL_GRAVITY: Vec3 = [0, -1, 0]

/** The scene with nothing on the mounts that are built anew. */
export const withoutMounts = (scene: Scene, mounts: readonly MountName[]): Scene => ({
  ...scene,
  rig: scene.rig.filter(({ mount }) => !mounts.includes(mount)),
})

/**
 * Bow and rig that stay, level and uncanted; swing weights on them hang as they do then. Fails where the limbs cannot
 * take their shape.
 */
export function staysOf(scene: Scene, { mounts, hold }: Pick<FindQuestion, "mounts" | "hold">): LimbResult<Stays> {
  const brace = placeLimbs(scene.bow, 0)
  if (!brace.ok) return brace
  const drawn = placeLimbs(scene.bow, 1)
  if (!drawn.ok) return drawn
  const kept = rig(withoutMounts(scene, mounts), LEVEL_GRAVITY)
  const whole = (limbs: LimbPlace) => compose([...bareParts(scene, limbs), ...kept].flatMap(({ solids }) => solids))
  const atDraw = whole(drawn.value)
  const { lift } = drawnBalance({
    holdForce: drawn.value.holdForce,
    nockHeight: scene.bow.nockHeightMm * MM,
    drawLength: scene.bow.drawLengthMm * MM,
    elbowElevation: scene.archer.elbowElevationDeg * DEGREE,
    mass: atDraw.mass,
    noseDown: 0,
  })
  return success({
    base: sumsOf(hold === "drawn" ? atDraw : whole(brace.value)),
    arrowMass: hold === "drawn" ? scene.bow.arrow.massG * GRAM : 0,
    drawn: { forwardMoment: atDraw.mass * atDraw.centre[0], lift },
    reach: reachOf(kept),
  })
}

function sumsOf({ mass, centre, aboutOrigin }: MassProperties): Float64Array {
  const sums = new Float64Array(SUMS)
  sums[MASS] = mass
  for (const axis of [0, 1, 2] as const) sums[FIRST + axis] = mass * centre[axis]
  sums[ROLL] = aboutOrigin.xx
  sums[YAW] = aboutOrigin.yy
  sums[PITCH] = aboutOrigin.zz
  return sums
}

/** How far parts of a rig stick out: the rims of their cylinders, and a swing weight's solids' centres. */
export function reachOf(parts: readonly Part[]): Float64Array {
  const reach = new Float64Array(REACHES).fill(Number.NEGATIVE_INFINITY)
  const include = (x: number, z: number, rimX: number, rimZ: number) => {
    reach[FORWARD_REACH] = Math.max(reach[FORWARD_REACH]!, x + rimX)
    reach[SIDE_REACH] = Math.max(reach[SIDE_REACH]!, Math.abs(z) + rimZ)
  }
  for (const { axis, solids } of parts) {
    if (axis === undefined) {
      for (const { centre } of solids) include(centre[0], centre[2], 0, 0)
      continue
    }
    const [dx, , dz] = axis.direction
    const rim = (component: number) => axis.outerRadius * Math.sqrt(Math.max(0, 1 - component * component))
    for (const t of [0, axis.length]) {
      include(axis.start[0] + dx * t, axis.start[2] + dz * t, rim(dx), rim(dz))
    }
  }
  return reach
}
