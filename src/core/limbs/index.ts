export { solveBrace } from "./brace"
export { drawCurve } from "./drawCurve"
export { solveDrawn } from "./drawn"
export { type LimbParameter, limbParameters } from "./parameters"
export type { LimbRates, NodeRate } from "./rates"
export { type LimbSensitivities, limbSensitivities } from "./sensitivities"
export type {
  BracedLimbs,
  DrawCurvePoint,
  LimbFailure,
  LimbFailureReason,
  LimbNode,
  LimbResult,
  LimbSetup,
  LimbState,
  PlanePoint,
  RecurveLimb,
  SecondMoments,
} from "./types"
