import { GRAVITY } from "../../constants"
import type { Vec3 } from "../../solids"
import { type Joint, pendulumOf, type SwingWeight } from "../pendulum"
import { LONGEST_STEP, STEP_IN_SWING } from "./settings"

export interface HungOn {
  /** The joint's place, m from the grip, bow axes. */
  readonly hinge: Vec3
  /** How the bow is canted while it is raised, rad. */
  readonly cant: number
  /** Dry friction in the joint, N·m. */
  readonly friction: number
  /** Viscous damping in the joint, N·m·s/rad. */
  readonly damping: number
}

/**
 * A swing weight turning in one plane that is carried by the bow: the plane of the bow for a hinge, the upright plane
 * of aim for a ball. The plane's own axes are x forward and y up in it; `angle`s in it run from its downward
 * direction, positive forward.
 */
export interface MotionModel {
  /** kg. */
  readonly mass: number
  /** Joint to centre of mass, m. */
  readonly arm: number
  /** About its own centre across and along the stem, kg·m². */
  readonly acrossCentre: number
  readonly alongCentre: number
  /** About the joint, across the stem, kg·m². */
  readonly aboutJoint: number
  /** The joint from the grip in the plane's axes, m: forward, up, and to the right of the plane. */
  readonly joint: Vec3
  /** Cosine and sine of the angle between the plane and the upright plane of aim. */
  readonly upright: number
  readonly tilted: number
  /** Largest angle from the plane's downward direction, rad; Infinity when it may turn right over. */
  readonly stop: number
  /** N·m. */
  readonly friction: number
  /** N·m·s/rad. */
  readonly damping: number
  /** Longest step of the integrator for this weight, s. */
  readonly step: number
}

/**
 * Whether a swing weight's motion stays in one plane. A hinge's always does. A ball's does as long as the bow's
 * downward direction is no further than the stop from the upright plane: nothing then pushes it sideways, for the
 * joint moves and gravity pulls in that plane. Canted further it leans sideways on its stop and counts as locked.
 */
export const swingsInPlane = (joint: Joint, stop: number, cant: number): boolean =>
  joint === "hinge" || Math.cos(stop) <= Math.cos(cant)

/**
 * The model of a swing weight on a bow held at a cant.
 *
 * A ball swings in the upright plane through its joint, so it is a hinge of an uncanted bow at the place to which the
 * cant has brought the joint. Its stop, a cone about the bow's downward direction at angle `stop`, cuts that plane at
 * the angle whose cosine is cos(stop)/cos(cant). On that stop it is held in the plane: sliding along the cone
 * sideways is left out.
 *
 * A stop of π or more is none. A weight without mass has no motion and stays where it is, by decision.
 * @throws RangeError for a negative or non-finite friction, damping or stop, a cant that is not finite or not
 * within a right angle, and a ball that `swingsInPlane` refuses.
 */
export function motionModel(swing: SwingWeight, { hinge, cant, friction, damping }: HungOn): MotionModel {
  if (!(friction >= 0 && damping >= 0 && swing.stop >= 0) || !Number.isFinite(friction + damping + swing.stop)) {
    throw new RangeError("friction, damping and stop must be finite and not negative")
  }
  if (!(Math.abs(cant) <= Math.PI / 2)) throw new RangeError("the cant must lie within a right angle")
  if (!swingsInPlane(swing.joint, swing.stop, cant)) {
    throw new RangeError("a ball joint canted past its stop does not swing in one plane")
  }
  const { mass, arm, acrossCentre, alongCentre } = pendulumOf(swing)
  const aboutJoint = acrossCentre + mass * arm * arm
  const [cosine, sine] = [Math.cos(cant), Math.sin(cant)]
  const [forward, up, right] = hinge
  const ball = swing.joint === "ball"
  return {
    mass,
    arm,
    acrossCentre,
    alongCentre,
    aboutJoint,
    joint: ball ? [forward, cosine * up - sine * right, sine * up + cosine * right] : hinge,
    upright: ball ? 1 : cosine,
    tilted: ball ? 0 : sine,
    stop: ball ? stopInPlane(swing.stop, cosine) : swing.stop >= Math.PI ? Number.POSITIVE_INFINITY : swing.stop,
    friction,
    damping,
    step: aboutJoint > 0 ? Math.min(LONGEST_STEP, STEP_IN_SWING / smallSwing(mass * arm, aboutJoint)) : LONGEST_STEP,
  }
}

/** Angular frequency of the small undamped swing, rad/s: √(M g l / I) (OpenStax University Physics vol. 1, 15.4). */
const smallSwing = (firstMoment: number, aboutJoint: number): number => Math.sqrt((firstMoment * GRAVITY) / aboutJoint)

function stopInPlane(stop: number, cosine: number): number {
  if (stop >= Math.PI || Math.cos(stop) <= -cosine) return Number.POSITIVE_INFINITY
  return Math.acos(Math.min(1, Math.cos(stop) / cosine))
}
