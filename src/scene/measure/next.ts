import { expectedSpread, type Fit, hangingAttitude } from "../../core/measure"
import type { Observation } from "../../core/measure"
import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import { type Evaluation, evaluate } from "../evaluate"
import { placeLimbs } from "../limbPlace"
import { metres } from "../assemble"
import type { Measurement, Scene } from "../schema"
import { decompose } from "./decompose"
import { measureFields as f } from "./fields"
import type { MeasuredFit } from "./fitScene"
import { observationOf } from "./observed"
import { type NamedPoint, namedPoints } from "./points"
import { assumedBody } from "./setup"
import { figureSpreads } from "./spread"

/** One reading that could be taken next, and what it would do. */
export interface NextReading {
  readonly kind: "scale" | "hang"
  /** Hangs only. */
  readonly point: NamedPoint | null
  /** How far the balance point of the rigged bow would then be known at 95 %, mm: forward, up and side together. */
  readonly spreadMm: number
}

export interface NextReadings {
  /** The same as things stand. */
  readonly nowMm: number
  /** Whether the readings alone place the balance point: else `nowMm` leans on what is assumed of any riser. */
  readonly determined: boolean
  /** Best first. */
  readonly best: readonly NextReading[]
}

/** A hook this near the balance point gives way to any touch; the bow has no rest there. */
const TOO_NEAR = 0.01

/**
 * Of weighing and hanging the bow as it is rigged now, by each of its named points and with usual errors, what each
 * would do for the balance point, best first. Swings and twists tell nothing of it that a hang does not tell better.
 * Null where the limbs cannot be strung.
 */
export function nextReadings(scene: Scene, fit: MeasuredFit | null): NextReadings | null {
  const limbs = placeLimbs(scene.bow, 0)
  const evaluated = evaluate({ ...scene, pose: { draw: 0, slopeDeg: 0, cantDeg: 0 } })
  if (!limbs.ok || !evaluated.ok) return null
  const seen = fit?.observations ?? []
  const known: Pick<Fit, "body"> = fit ?? { body: assumedBody(scene) }
  const on = scene.rig.some(({ chain }) => chain.length > 0) ? ("rigged" as const) : ("bow" as const)
  const asked = (reading: Measurement) => observationOf(scene, limbs.value, reading)
  const common = { on, rig: on === "rigged" ? scene.rig : undefined, excluded: false, note: "", date: "" }
  const scale = asked({ kind: "scale", massG: evaluated.value.now.mass * 1e3, errorG: usual("errorG"), ...common })
  const spread = (next: Observation | null) => expectedSpread(seen, known, next, scale.rest, decompose) * 1e3
  const hangs = namedPoints(scene, evaluated.value).flatMap((point): NextReading[] => {
    const tilt = restingTilt(point, evaluated.value)
    if (tilt === null) return []
    const errors = { pointErrorMm: usual("pointErrorMm"), errorDeg: usual("errorDeg") }
    const hang = asked({ kind: "hang", atMm: [...point.atMm], ...tilt, ...errors, ...common })
    return [{ kind: "hang", point, spreadMm: spread(hang) }]
  })
  const best: NextReading[] = [{ kind: "scale", point: null, spreadMm: spread(scale) }, ...hangs]
  const spreads = fit === null || !fit.converged ? null : figureSpreads(evaluated.value, fit)
  const determined = axes.every((axis) => Number.isFinite(spreads?.[`centreMm.${axis}`]))
  return { nowMm: spread(null), determined, best: best.sort((a, b) => a.spreadMm - b.spreadMm) }
}

const axes = ["forward", "up", "side"] as const

const usual = (name: "errorG" | "pointErrorMm" | "errorDeg"): number => f[name].fallback ?? 0

/** How the bow would hang from a point, in degrees; null where it would not rest. */
export function restingTilt(
  { atMm }: Pick<NamedPoint, "atMm">,
  { now }: Pick<Evaluation, "now">,
): { slopeDeg: number; cantDeg: number } | null {
  const at = metres(atMm)
  const [x, y, z] = now.centre
  if (Math.hypot(at[0] - x, at[1] - y, at[2] - z) < TOO_NEAR) return null
  const tilt = hangingAttitude(at, now.centre)
  return tilt === null ? null : { slopeDeg: tilt.slope / DEGREE, cantDeg: tilt.cant / DEGREE }
}
