import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import type { MeasuredBody, Observation } from "../../core/measure"
import type { Vec3 } from "../../core/solids"
import { GRAM, metres, MM } from "../assemble"
import type { LimbPlace } from "../limbPlace"
import type { Measurement, Scene } from "../schema"
import { assumedBody, restOf } from "./setup"

/** About which bow axis a swing turns. */
export const axisOf: Readonly<Record<"pitch" | "yaw" | "roll", Vec3>> = {
  pitch: [0, 0, 1],
  yaw: [0, 1, 0],
  roll: [1, 0, 0],
}

/** A reading of the file as the fit takes it, SI, with the limbs at brace in `limbs` and the riser taken to be `body`. */
export function observationOf(
  scene: Scene,
  limbs: LimbPlace,
  seen: Measurement,
  body: MeasuredBody = assumedBody(scene),
): Observation {
  const rest = restOf(scene, limbs, seen, body)
  switch (seen.kind) {
    case "scale":
      return { kind: "scale", rest, mass: seen.massG * GRAM, massError: seen.errorG * GRAM }
    case "hang":
      return {
        kind: "hang",
        rest,
        at: metres(seen.atMm),
        slope: seen.slopeDeg * DEGREE,
        cant: seen.cantDeg === undefined ? null : seen.cantDeg * DEGREE,
        tiltError: seen.errorDeg * DEGREE,
        pointError: seen.pointErrorMm * MM,
      }
    case "swing":
      return {
        kind: "swing",
        rest,
        ...timed(seen),
        at: metres(seen.atMm),
        amplitude: seen.amplitudeDeg * DEGREE,
        pointError: seen.pointErrorMm * MM,
      }
    case "twist":
      return {
        kind: "twist",
        rest,
        ...timed(seen),
        lineLength: seen.lineMm * MM,
        radius: seen.radiusMm * MM,
        radiusError: seen.radiusErrorMm * MM,
      }
  }
}

const timed = ({ axis, seconds, errorSeconds, count }: Extract<Measurement, { count: number }>) => ({
  axis: axisOf[axis],
  period: seconds / count,
  periodError: errorSeconds / count,
})
