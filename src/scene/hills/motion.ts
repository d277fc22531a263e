import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import { type MotionModel, motionModel, swingsInPlane } from "../../core/swing/motion"
import type { Vec3 } from "../../core/solids"
import { type Address, valueAt } from "../address"
import { MM, rig } from "../assemble"
import type { PartOf, Scene } from "../schema"

/** One swing weight of a scene, ready to be set in motion. */
export interface SwingMotion {
  /** `back/swing`, as in the parts table. */
  readonly path: string
  readonly address: Address
  /**
   * Null for a ball joint canted past its stop: it leans sideways on the stop and counts as locked.
   * See `swingsInPlane`.
   */
  readonly model: MotionModel | null
  /** Unit direction of the stem from its joint, bow axes, at an angle of the model, rad. */
  stem(angle: number): Vec3
}

/** N·m per N·mm, the unit of friction in a scene file. */
const NEWTON_METRE = MM
const DOWN = [0, -1, 0] as const

/** Every swing weight of a scene in the order of its parts, on the bow held at the cant of its pose. */
export function swingMotions(scene: Scene): SwingMotion[] {
  const cant = scene.pose.cantDeg * DEGREE
  // Where a joint is does not depend on where its weight hangs, so any gravity will do.
  return rig(scene, DOWN).flatMap(({ hung, path, address }): SwingMotion[] => {
    if (hung === undefined) return []
    const { weight, hinge } = hung
    const stem = weight.joint === "hinge" ? inBowPlane : inUprightPlane(cant)
    if (!swingsInPlane(weight.joint, weight.stop, cant)) return [{ path, address, model: null, stem }]
    const { frictionNmm, damping } = valueAt(scene, address) as PartOf<"swing">
    const friction = frictionNmm * NEWTON_METRE
    return [{ path, address, model: motionModel(weight, { hinge, cant, friction, damping }), stem }]
  })
}

/** A hinge turns in the bow's own plane. */
const inBowPlane = (angle: number): Vec3 => [Math.sin(angle), 0 - Math.cos(angle), 0]

/** A ball swings in the upright plane of aim, which a canted bow sees turned back by its cant κ: Rx(-κ) d. */
const inUprightPlane = (cant: number) => {
  const [cosine, sine] = [Math.cos(cant), Math.sin(cant)]
  return (angle: number): Vec3 => [Math.sin(angle), 0 - cosine * Math.cos(angle), sine * Math.cos(angle)]
}
