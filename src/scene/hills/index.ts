export {
  compareSlopes,
  FLATNESS_DEG,
  type SlopeComparison,
  type SlopeCurve,
  slopeComparison,
  STEEPEST_DEG,
} from "./compare"
export {
  applyHang,
  type FlattestAnswer,
  type FlattestHang,
  flattestHang,
  type HangProgress,
  type HangQuestion,
  type HangSearch,
  hangSearch,
  placesFor,
} from "./flattest"
export { inMotion } from "./inMotion"
export { type SwingMotion, swingMotions } from "./motion"
export { type ChainEnd, type HangPlace, hangPlaces } from "./place"
export type { HangRanges } from "./ranges"
export type { TryRange } from "./steps"
