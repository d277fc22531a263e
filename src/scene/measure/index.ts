export { fitScene, type MeasuredFit, riserOf } from "./fitScene"
export { type NextReading, type NextReadings, nextReadings, restingTilt } from "./next"
export { type NamedPoint, namedPoints } from "./points"
export { figureSpreads, type Spreads } from "./spread"
