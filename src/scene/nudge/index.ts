export { quickTensor, type ShotBow, shotBow } from "./body"
export { nudgeFields } from "./fields"
export { type HandHold, heldBy, type HoldChoice, stringHold } from "./hold"
export {
  anglesAt,
  type Drop,
  landingOf,
  type Motion,
  motions,
  noseDrops,
  nudgeTrace,
  type NudgeQuestion,
  SAMPLE_S,
  WATCHED_S,
} from "./trace"
