import {
  type DrawnBalance,
  drawnBalance,
  type GravityMoments,
  gravityInBow,
  gravityMoments,
  poseRotation,
} from "../core/balance"
import { RADIAN_PER_DEGREE as DEGREE } from "../core/constants"
import { compose, type MassProperties, type Mat3, type Principal, principal, type Vec3 } from "../core/solids"
import { freeTurnInertia, pendulumOf } from "../core/swing"
import { bareParts, MM, type Part, rig } from "./assemble"
import { type Result, success } from "./errors"
import { unsolvable } from "./limbErrors"
import { type LimbPlace, placeLimbs } from "./limbPlace"
import type { Pose, Scene } from "./schema"

/** One part with its share of the balance, SI. */
export interface WeighedPart extends Part {
  readonly mass: number
  /** Bow axes, m. A stack of no discs has the place where it would be. */
  readonly centre: Vec3
  /** N·m about the grip at the pose; positive lowers the front. */
  readonly noseDown: number
}

/** Everything known about the bow in one pose, SI, bow axes, moments and tensor `aboutOrigin` about the grip. */
export interface PoseBalance extends MassProperties, GravityMoments {
  readonly pose: Pose
  readonly rotation: Mat3
  readonly gravity: Vec3
  readonly limbs: LimbPlace
  readonly parts: readonly WeighedPart[]
}

export interface Evaluation {
  readonly scene: Scene
  /** As held now. */
  readonly now: PoseBalance
  readonly principal: Principal
  /** Pitch resistance about the grip with every swing weight free, kg·m²; null without one. */
  readonly pitchInertiaFree: number | null
  /** The bow without its rig, at the same pose. */
  readonly stripped: MassProperties
  /** Level at full draw. */
  readonly fullDraw: PoseBalance & DrawnBalance
}

const PITCH_AXIS: Vec3 = [0, 0, 1]

/**
 * All numbers of a scene at its own pose and at full draw. Fails only where the limbs cannot take the shape
 * the scene asks for; the error names the field.
 */
export function evaluate(scene: Scene): Result<Evaluation> {
  const place = placeLimbs(scene.bow, scene.pose.draw)
  if (!place.ok) return unsolvable(place)
  const drawn = fullDraw(scene, 0)
  if (!drawn.ok) return drawn
  const now = poseBalance(scene, place.value, scene.pose)
  return success({
    scene,
    now,
    principal: principal(now.aboutCentre),
    pitchInertiaFree: pitchInertiaFree(now),
    stripped: stripped(bareParts(scene, place.value)),
    fullDraw: drawn.value,
  })
}

const strippedOf = new WeakMap<readonly Part[], MassProperties>()

/** The bow with no rig; composed once for the same parts. */
function stripped(parts: readonly Part[]): MassProperties {
  const known = strippedOf.get(parts)
  if (known !== undefined) return known
  const whole = compose(parts.flatMap((part) => part.solids))
  strippedOf.set(parts, whole)
  return whole
}

/** The balance at full draw, uncanted, on a slope. */
export function fullDraw(scene: Scene, slopeDeg: number): Result<PoseBalance & DrawnBalance> {
  const place = placeLimbs(scene.bow, 1)
  if (!place.ok) return unsolvable(place)
  const balance = poseBalance(scene, place.value, { draw: 1, slopeDeg, cantDeg: 0 })
  return success({
    ...balance,
    ...drawnBalance({
      holdForce: place.value.holdForce,
      nockHeight: scene.bow.nockHeightMm * MM,
      drawLength: scene.bow.drawLengthMm * MM,
      elbowElevation: scene.archer.elbowElevationDeg * DEGREE,
      mass: balance.mass,
      noseDown: balance.noseDown,
    }),
  })
}

/** Sums a scene's parts in one pose, its swing weights at rest. */
export function poseBalance(scene: Scene, limbs: LimbPlace, pose: Pose): PoseBalance {
  const gravity = gravityInBow(poseRotation(pose.slopeDeg * DEGREE, pose.cantDeg * DEGREE))
  return partsBalance([...bareParts(scene, limbs), ...rig(scene, gravity)], limbs, pose)
}

/** Sums parts wherever they are in the bow, held in one pose. */
export function partsBalance(parts: readonly Part[], limbs: LimbPlace, pose: Pose): PoseBalance {
  const rotation = poseRotation(pose.slopeDeg * DEGREE, pose.cantDeg * DEGREE)
  const gravity = gravityInBow(rotation)
  const whole = compose(parts.flatMap((part) => part.solids))
  return {
    ...whole,
    ...gravityMoments(whole.mass, whole.centre, rotation),
    pose,
    rotation,
    gravity,
    limbs,
    parts: parts.map((part) => weigh(part, rotation)),
  }
}

function weigh(part: Part, rotation: Mat3): WeighedPart {
  let mass = 0
  let [x, y, z] = [0, 0, 0]
  for (const solid of part.solids) {
    mass += solid.mass
    x += solid.mass * solid.centre[0]
    y += solid.mass * solid.centre[1]
    z += solid.mass * solid.centre[2]
  }
  const centre: Vec3 = mass > 0 ? [x / mass, y / mass, z / mass] : (part.solids[0]?.centre ?? [0, 0, 0])
  return { ...part, mass, centre, noseDown: gravityMoments(mass, centre, rotation).noseDown }
}

/** A swing weight off its stops turns with the bow only as far as its hinge drags it; on a stop it is locked. */
function pitchInertiaFree(balance: PoseBalance): number | null {
  const swings = balance.parts.filter((part) => part.hung !== undefined)
  if (swings.length === 0) return null
  let inertia = balance.aboutOrigin.zz
  for (const { hung, solids } of swings) {
    if (hung === undefined || hung.rest.onStop) continue
    inertia -= compose(solids).aboutOrigin.zz
    inertia += freeTurnInertia(pendulumOf(hung.weight), hung.hinge, hung.rest.direction, PITCH_AXIS)
  }
  return inertia
}
