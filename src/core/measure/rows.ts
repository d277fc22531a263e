import { poseRotation } from "../balance"
import { GRAVITY } from "../constants"
import { centreRate, type MassMoments, sumMoments } from "../sensitivity"
import { aboutAxis, along, dot, type Mat3, norm, scale, subtract, type Vec3 } from "../solids"
import { amplitudeStretch } from "./amplitude"
import { bodyMoments, bodyRates, type MeasuredBody } from "./body"
import type { Hung, Observation, Swung, Twisted } from "./observation"

/** One number that was read, against what the body says it should have been. */
export interface Row {
  /** `forward` and `side`: how far the balance point is from the plumb line, m. */
  readonly what: "mass" | "forward" | "side" | "period"
  /** Read less modelled: kg, m, s. */
  readonly residual: number
  /** One standard deviation of it. */
  readonly error: number
  /** Rates of the modelled number by the unknowns, in their order. */
  readonly gradient: readonly number[]
  /** Hangs only: from the point straight down to the balance point, m; negative when balanced on top of it. */
  readonly below?: number
}

/** The rows of one observation with a body assumed. Gradients are exact; the error's own change is left out of them. */
export function rowsOf(seen: Observation, body: MeasuredBody): Row[] {
  const whole = sumMoments(bodyMoments(body), seen.rest)
  const rates = bodyRates(body)
  switch (seen.kind) {
    case "scale":
      return [
        {
          what: "mass",
          residual: seen.mass - whole.mass,
          error: seen.massError,
          gradient: rates.map(({ mass }) => mass),
        },
      ]
    case "hang":
      return hungRows(seen, whole, rates)
    case "swing":
      return [swungRow(seen, whole, rates)]
    case "twist":
      return [twistedRow(seen, whole, rates)]
  }
}

/**
 * ĝ × (r - p) = 0 as the two level distances of the balance point r from the plumb line through p, which are linear in
 * r: the first and third row of R times (r - p). A plumb line wrong by an angle misses by that times the distance down.
 */
function hungRows(seen: Hung, whole: MassMoments, rates: readonly MassMoments[]): Row[] {
  const rotation: Mat3 = poseRotation(seen.slope, seen.cant ?? 0)
  const centre = scale(whole.first, 1 / whole.mass)
  const arm = subtract(centre, seen.at)
  const below = 0 - dot(rotation[1], arm)
  const error = Math.hypot(seen.pointError, below * seen.tiltError)
  const row = (what: "forward" | "side", direction: Vec3): Row => ({
    what,
    residual: 0 - dot(direction, arm),
    error,
    gradient: rates.map((rate) => dot(direction, centreRate({ mass: whole.mass, centre }, rate))),
    below,
  })
  const forward = row("forward", rotation[0])
  return seen.cant === null ? [forward] : [forward, row("side", rotation[2])]
}

/**
 * T = 2π √(I/(m g D)) × amplitude, I and D about the axis through the point (OpenStax University Physics vol. 1,
 * 15.4). With G the first moment about the axis, m D = |G|. A point wrong by δ moves D by δ and I by 2 m D δ.
 */
function swungRow(seen: Swung, whole: MassMoments, rates: readonly MassMoments[]): Row {
  const { at, axis } = seen
  const across = (v: Vec3): Vec3 => along(v, axis, 0 - dot(v, axis))
  const aboutPoint = ({ mass, first, aboutOrigin }: MassMoments) => ({
    inertia: aboutAxis(aboutOrigin, axis) - 2 * dot(across(first), at) + mass * dot(across(at), at),
    first: subtract(across(first), scale(across(at), mass)),
  })
  const { inertia, first } = aboutPoint(whole)
  const moment = norm(first)
  const period = 2 * Math.PI * Math.sqrt(inertia / (GRAVITY * moment)) * amplitudeStretch(seen.amplitude)
  const change = (inertiaRate: number, momentRate: number) =>
    (period / 2) * (inertiaRate / inertia - momentRate / moment)
  const byPoint = change(2 * moment, whole.mass) * seen.pointError
  return {
    what: "period",
    residual: seen.period - period,
    error: Math.hypot(seen.periodError, byPoint),
    gradient: rates.map(aboutPoint).map((rate) => change(rate.inertia, dot(first, rate.first) / moment)),
  }
}

/** T = 2π √(I l/(m g r²)), I about the plumb line through the balance point (bifilar and trifilar suspension). */
function twistedRow(seen: Twisted, whole: MassMoments, rates: readonly MassMoments[]): Row {
  const { axis, lineLength, radius } = seen
  const centre = scale(whole.first, 1 / whole.mass)
  const across = along(centre, axis, 0 - dot(centre, axis))
  const inertia = aboutAxis(whole.aboutOrigin, axis) - whole.mass * dot(across, across)
  const period = (2 * Math.PI * Math.sqrt((inertia * lineLength) / (whole.mass * GRAVITY))) / radius
  const gradient = rates.map((rate) => {
    // Of |F⊥|²/m: 2 F⊥·F⊥'/m - |F⊥|² m'/m².
    const shifted = 2 * dot(across, rate.first) - dot(across, across) * rate.mass
    const inertiaRate = aboutAxis(rate.aboutOrigin, axis) - shifted
    return (period / 2) * (inertiaRate / inertia - rate.mass / whole.mass)
  })
  return {
    what: "period",
    residual: seen.period - period,
    error: Math.hypot(seen.periodError, (period * seen.radiusError) / radius),
    gradient,
  }
}
