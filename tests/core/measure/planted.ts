/** Invented bows with known numbers, and readings made of them, with or without seeded noise. */
import { gravityInBow, poseRotation } from "../../../src/core/balance"
import { bodyMoments, hangingAttitude, type MeasuredBody, type Observation, rowsOf } from "../../../src/core/measure"
import { type MassMoments, momentsOf, NO_MOMENTS, sumMoments } from "../../../src/core/sensitivity"
import { add, cross, pointSolid, scale, slender, unit, type Vec3 } from "../../../src/core/solids"

export const DEGREE = Math.PI / 180

export const riser: MeasuredBody = {
  mass: 1.237,
  centre: [0.019, -0.007, 0.003],
  squares: [0.165 ** 2, 0.045 ** 2, 0.163 ** 2],
}

/** Limbs and string of no particular bow. */
export const limbs: MassMoments = sumMoments(
  ...[
    slender(0.17, [0.0, 0.31, 0], [-0.07, 0.86, 0]),
    slender(0.17, [0.0, -0.27, 0], [-0.07, -0.82, 0]),
    slender(0.007, [-0.22, 0.84, 0], [-0.22, -0.8, 0]),
  ].map(momentsOf),
)
export const bareRiser = NO_MOMENTS

/** A seeded generator of normal numbers: mulberry32 and Box-Muller. */
export function normal(seed: number): () => number {
  let state = seed
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform())
}

const quiet = () => 0

export const centreOf = (body: MeasuredBody, rest: MassMoments): Vec3 => {
  const whole = sumMoments(bodyMoments(body), rest)
  return scale(whole.first, 1 / whole.mass)
}

/** What a scale would show. */
export function weigh(body: MeasuredBody, rest: MassMoments, massError: number, noise = quiet): Observation {
  const mass = body.mass + rest.mass
  return { kind: "scale", rest, mass: mass + massError * noise(), massError }
}

/** How the bow would hang: from a point a little off the one noted, the plumb line read a little off. */
export function hang(
  body: MeasuredBody,
  rest: MassMoments,
  at: Vec3,
  { tiltError, pointError }: { tiltError: number; pointError: number },
  noise = quiet,
): Observation {
  const hook = add(at, [pointError * noise(), pointError * noise(), pointError * noise()])
  const { slope, cant } = hangingAttitude(hook, centreOf(body, rest))!
  const down = gravityInBow(poseRotation(slope, cant))
  const aside = unit(cross(down, Math.abs(down[0]) < 0.7 ? [1, 0, 0] : [0, 1, 0]))
  const across = cross(down, aside)
  const read = add(down, add(scale(aside, tiltError * noise()), scale(across, tiltError * noise())))
  const seen = hangingAttitude([0, 0, 0], read)!
  return { kind: "hang", rest, at, ...seen, tiltError, pointError }
}

/** The period of a swing about an axis through a point. */
export function swing(
  body: MeasuredBody,
  rest: MassMoments,
  at: Vec3,
  axis: Vec3,
  { periodError, pointError, amplitude = 0 }: { periodError: number; pointError: number; amplitude?: number },
  noise = quiet,
): Observation {
  // Only the distance down counts: the point is off along the plumb line.
  const centre = centreOf(body, rest)
  const up = unit([at[0] - centre[0], at[1] - centre[1], at[2] - centre[2]])
  const hook = add(at, scale(up, pointError * noise()))
  const blank = { kind: "swing", rest, axis, period: 0, periodError, amplitude, pointError } as const
  const [row] = rowsOf({ ...blank, at: hook }, body)
  return { ...blank, at, period: 0 - row!.residual + periodError * noise() }
}

/** The period of a twist about an axis through the balance point. */
export function twist(
  body: MeasuredBody,
  rest: MassMoments,
  axis: Vec3,
  lines: { lineLength: number; radius: number; periodError: number; radiusError: number },
  noise = quiet,
): Observation {
  const { radius, radiusError, periodError } = lines
  const blank = { kind: "twist", rest, axis, period: 0, ...lines } as const
  const [row] = rowsOf({ ...blank, radius: radius + radiusError * noise() }, body)
  return { ...blank, period: 0 - row!.residual + periodError * noise() }
}

/** A whole bench session: weighed, hung from string, rod and grip, swung about all three axes, twisted about two. */
export function session(body: MeasuredBody, rest: MassMoments, noise = quiet): Observation[] {
  const hook = { tiltError: 0.4 * DEGREE, pointError: 0.0015 }
  const watch = { periodError: 0.004, pointError: 0.0015, amplitude: 8 * DEGREE }
  const lines = { lineLength: 1.4, radius: 0.25, periodError: 0.006, radiusError: 0.001 }
  return [
    weigh(body, rest, 0.004, noise),
    hang(body, rest, [-0.22, 0.3, 0], hook, noise),
    hang(body, rest, [0.35, -0.07, 0], hook, noise),
    hang(body, rest, [0.06, 0.17, 0.05], hook, noise),
    swing(body, rest, [0.05, 0.13, 0], [0, 0, 1], watch, noise),
    swing(body, rest, [0.03, 0.24, 0], [1, 0, 0], watch, noise),
    twist(body, rest, [0, 1, 0], lines, noise),
    twist(body, rest, [0, 0, 1], lines, noise),
    twist(body, rest, [1, 0, 0], lines, noise),
  ]
}

export const lone = (mass: number, at: Vec3) => momentsOf(pointSolid(mass, at))
