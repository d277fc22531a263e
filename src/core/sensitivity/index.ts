export { centreRate, drawnBalanceRates, gravityMomentRates, type HoldRates, NO_HOLD_RATES } from "./balance"
export {
  boxEdgeRates,
  gyrationRates,
  lineRates,
  type MovingPoint,
  slenderRates,
  tubeLengthRates,
  tubeRadiusRates,
} from "./growth"
export { type MassMoments, momentsOf, NO_MOMENTS, scaleMoments, sumMoments } from "./massMoments"
export { movedRates, turnedRates } from "./motion"
export { cantRates, NO_POSE_RATES, type PoseRates, slopeRates } from "./pose"
export { restTurn, stopTurn } from "./swingTurn"
