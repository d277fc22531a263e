import { measureNames as names } from "../../words/measureNames"
import { field } from "../fields"

/** Readings a scene may hold, and setups its log may: far beyond a season, low enough that no file stalls the page. */
export const MAX_MEASUREMENTS = 60
export const MAX_LOG = 300
export const MAX_SCORES = 60

/**
 * The numbers of a reading. An error is one standard deviation: two readings in three are nearer than that. Its default
 * is what a kitchen scale, a phone's tilt or a thumb on a stopwatch usually does (common practice, no source).
 */
export const measureFields = {
  massG: field(names.mass, "mass", 1, 20_000, { step: 1 }),
  errorG: field(names.error, "mass", 0.01, 1000, { step: 0.5, coarse: 5, fallback: 3 }),
  slopeDeg: field(names.slope, "angle", -90, 90, { step: 0.1, coarse: 1 }),
  cantDeg: field(names.cant, "angle", -180, 180, { step: 0.1, coarse: 1 }),
  errorDeg: field(names.error, "angle", 0.01, 45, { step: 0.1, coarse: 1, fallback: 0.5 }),
  pointErrorMm: field(names.pointError, "length", 0.01, 200, { step: 0.5, coarse: 5, fallback: 2 }),
  count: field(names.swings, "count", 1, 200, { step: 1, coarse: 5, whole: true }),
  seconds: field(names.seconds, "duration", 0.1, 3600, { step: 0.1, coarse: 1 }),
  errorSeconds: field(names.error, "duration", 0.001, 60, { step: 0.05, coarse: 0.5, fallback: 0.15 }),
  amplitudeDeg: field(names.amplitude, "angle", 0, 150, { step: 1, coarse: 5, fallback: 5 }),
  lineMm: field(names.line, "length", 50, 20_000, { step: 5, coarse: 50 }),
  radiusMm: field(names.radius, "length", 10, 2000, { step: 1, coarse: 10 }),
  radiusErrorMm: field(names.radiusError, "length", 0.01, 200, { step: 0.5, coarse: 5, fallback: 2 }),
} as const

/** The numbers of a tried setup in the log. */
export const logFields = {
  rating: field(names.rating, "count", 1, 5, { step: 1, coarse: 1, whole: true }),
  score: field(names.score, "count", 0, 2000, { step: 1, coarse: 10 }),
  groupMm: field(names.group, "length", 0, 3000, { step: 5, coarse: 50 }),
} as const
