export { freeTurnInertia } from "./freeInertia"
export { type Joint, type Pendulum, pendulumOf, type SwingWeight, swingSolids } from "./pendulum"
export { type SwingRest, swingRest } from "./rest"
