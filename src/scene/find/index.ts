export { type FoundSetup, foundSetup } from "./answers"
export { type Miss, missOfLimit } from "./misses"
export { mountsWithSwings } from "./mounts"
export type { Asked, Order, Report } from "./pool/messages"
export { type Outcome, type Progress, type RunningFind, startFind, type WorkerPort } from "./pool/pool"
export { serveFind } from "./pool/serve"
export {
  type FindQuestion,
  type FindTarget,
  questionFor,
  questionSchema,
  type ScoreName,
  scoreNames,
} from "./question"
export { MOST_OPTIONS, type SetupSpace, setupSpace, type SpaceFault } from "./space"
export { spaceErrors } from "./spaceErrors"
