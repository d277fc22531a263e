import { gravityInBow, poseRotation } from "../../core/balance"
import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import { bodyMoments, hangingAttitude, type MeasuredBody } from "../../core/measure"
import { type MassMoments, momentsOf, NO_MOMENTS, sumMoments } from "../../core/sensitivity"
import { scale, type Vec3 } from "../../core/solids"
import { bareParts, metres, MM, GRAM, type Part, rig } from "../assemble"
import type { LimbPlace } from "../limbPlace"
import type { Measurement, Scene } from "../schema"

const LEVEL: Vec3 = [0, -1, 0]

/** The riser as the scene has it now: what is assumed until a reading says otherwise. SI. */
export function assumedBody({ bow }: Pick<Scene, "bow">): MeasuredBody {
  const [roll, yaw, pitch] = bow.riser.gyrationMm
  const square = (mm: number) => (mm * MM) ** 2
  return {
    mass: bow.riser.massG * GRAM,
    centre: metres(bow.riser.centreMm),
    squares: [square(roll), square(yaw), square(pitch)],
  }
}

/**
 * What was on the bow besides the riser when the reading was taken, at brace and without an arrow. Swing weights hang as
 * they hung then: by the tilt that was read, or for a swing by how the bow with the riser `body` would hang; they count as
 * locked.
 */
export function restOf(scene: Scene, limbs: LimbPlace, seen: Measurement, body: MeasuredBody): MassMoments {
  if (seen.on === "riser") return NO_MOMENTS
  const bare = bareParts(scene, limbs).filter(({ kind }) => kind !== "riser")
  const whole = (gravity: Vec3) => momentsOfParts([...bare, ...rig({ ...scene, rig: seen.rig ?? [] }, gravity)])
  switch (seen.kind) {
    case "hang":
      return whole(gravityAt(seen.slopeDeg * DEGREE, (seen.cantDeg ?? 0) * DEGREE))
    case "swing": {
      const level = sumMoments(whole(LEVEL), bodyMoments(body))
      const hanging = hangingAttitude(metres(seen.atMm), scale(level.first, 1 / level.mass))
      return whole(hanging === null ? LEVEL : gravityAt(hanging.slope, hanging.cant))
    }
    case "scale":
    case "twist":
      return whole(LEVEL)
  }
}

const gravityAt = (slope: number, cant: number): Vec3 => gravityInBow(poseRotation(slope, cant))

export const momentsOfParts = (parts: readonly Part[]): MassMoments =>
  sumMoments(...parts.flatMap(({ solids }) => solids.map(momentsOf)))
