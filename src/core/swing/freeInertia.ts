import { cross, dot, type Vec3 } from "../solids"
import type { Pendulum } from "./pendulum"

/**
 * What a freely hanging pendulum adds, at the first instant of a quick turn, to the bow's moment of inertia about
 * the unit `axis` through the grip, kg·m². The hinge at `hinge` (m from the grip) moves with axis × hinge per unit
 * rate. Along the stem the whole mass M follows; across it the pendulum swings back and only
 * M·Ic/(Ic + M l²) does, Ic about its own centre. (The impulse at the pivot of a free rigid body.)
 */
export function freeTurnInertia(pendulum: Pendulum, hinge: Vec3, stem: Vec3, axis: Vec3): number {
  const { mass, arm, acrossCentre } = pendulum
  const motion = cross(axis, hinge)
  const along = dot(motion, stem) ** 2
  const across = dot(motion, motion) - along
  const aboutHinge = acrossCentre + mass * arm * arm
  const massAcross = aboutHinge > 0 ? (mass * acrossCentre) / aboutHinge : mass
  return mass * along + massAcross * across
}
