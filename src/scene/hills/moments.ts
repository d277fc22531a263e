import { GRAVITY, RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import { gravityInBow, poseRotation } from "../../core/balance"
import { dot, type Mat3, type Solid, type Vec3 } from "../../core/solids"
import { type HungSwing, bareParts, rig } from "../assemble"
import { pendulumOf, swingRest } from "../../core/swing"
import type { LimbPlace } from "../limbPlace"
import type { Scene } from "../schema"

/** A slope with what turns with it: the bow's rotation and gravity in bow axes (unit). */
export interface Hillside {
  readonly slopeDeg: number
  readonly rotation: Mat3
  readonly gravity: Vec3
}

/** An uncanted bow on a slope. */
export function hillside(slopeDeg: number): Hillside {
  const rotation = poseRotation(slopeDeg * DEGREE, 0)
  return { slopeDeg, rotation, gravity: gravityInBow(rotation) }
}

/** Σ m r about the grip, kg·m, bow axes: all that gravity's moment asks of what is fixed in the bow. */
export function firstMoment(solids: Iterable<Solid>): Vec3 {
  let [x, y, z] = [0, 0, 0]
  for (const { mass, centre } of solids) {
    x += mass * centre[0]
    y += mass * centre[1]
    z += mass * centre[2]
  }
  return [x, y, z]
}

/** A swing weight as gravity's moment sees it: its mass at the hinge, and mass times arm along the stem. */
export interface HangingWeight {
  readonly swing: HungSwing
  /** M·hinge, kg·m. */
  readonly atHinge: Vec3
  /** M·l, kg·m. */
  readonly alongStem: number
}

/** A scene at full draw, split into what is fixed in the bow and what swings. */
export interface SplitRig {
  readonly fixed: Vec3
  readonly swings: readonly HangingWeight[]
  /** The whole, kg. */
  readonly mass: number
}

export function splitRig(scene: Scene, limbs: LimbPlace): SplitRig {
  const parts = [...bareParts(scene, limbs), ...rig(scene, hillside(0).gravity)]
  const solids = parts.flatMap((part) => (part.hung === undefined ? part.solids : []))
  const swings = parts.flatMap((part) => (part.hung === undefined ? [] : [hanging(part.hung)]))
  const mass = parts.reduce((sum, part) => part.solids.reduce((all, solid) => all + solid.mass, sum), 0)
  return { fixed: firstMoment(solids), swings, mass }
}

function hanging(swing: HungSwing): HangingWeight {
  const { mass, arm } = pendulumOf(swing.weight)
  const [x, y, z] = swing.hinge
  return { swing, atHinge: [mass * x, mass * y, mass * z], alongStem: mass * arm }
}

/** Nose-down moment, N·m, of a first moment fixed in the bow. */
export const fixedNoseDown = (moment: Vec3, { rotation }: Hillside): number => GRAVITY * dot(rotation[0], moment)

/** Nose-down moment, N·m, of a hanging weight whose stem lies along `direction`, unit, bow axes. */
export const hangingNoseDown = (weight: HangingWeight, direction: Vec3, { rotation }: Hillside): number =>
  GRAVITY * (dot(rotation[0], weight.atHinge) + weight.alongStem * dot(rotation[0], direction))

/** The stem's direction where the weight rests on a slope. */
export const restingStem = ({ weight }: HungSwing, { gravity }: Hillside): Vec3 =>
  swingRest(gravity, weight.joint, weight.stop).direction
