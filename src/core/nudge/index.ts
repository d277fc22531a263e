export { type Landing, landing } from "./arrow"
export { dampingFor, noseDrop, stringStiffness } from "./held"
export {
  angularMomentum,
  type Hold,
  type Nudge,
  nudged,
  nudgeEnergy,
  type NudgeTrace,
  resistsEverywhere,
} from "./nudge"
export { hingedTensor, tensorOf } from "./swings"
