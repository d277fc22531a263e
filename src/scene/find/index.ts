export { type FoundSetup, foundSetup } from "./answers"
export { type Miss, type MissQuestion, missesOf, missQuestions } from "./misses"
export {
  type FindQuestion,
  type FindTarget,
  mountsWithSwings,
  questionFor,
  questionSchema,
  type ScoreName,
  scoreNames,
} from "./question"
export { MOST_OPTIONS, type SetupSpace, setupSpace } from "./space"
