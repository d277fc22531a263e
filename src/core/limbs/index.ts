export { solveBrace } from "./brace"
export { drawCurve } from "./drawCurve"
export { solveDrawn } from "./drawn"
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
