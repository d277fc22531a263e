export { type Moment, STEADY_MS, STEADY_WITHIN, type Steadiness, steadier, UNSTEADY } from "./steady"
export { readTaps, type Tapped } from "./taps"
export { downInPhone, type ScreenSide, tiltFrom, type Zero, zeroAt } from "./tilt"
