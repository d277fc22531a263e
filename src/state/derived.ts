import type { Evaluation } from "../scene/evaluate"
import { type Figures, figuresOf } from "../scene/figures"
import type { BenchState } from "./bench"

const known = new WeakMap<Evaluation, Figures>()

/** The report's figures for the scene on the bench, worked out once an evaluation. */
export function figures(state: BenchState): Figures {
  const found = known.get(state.evaluation)
  if (found !== undefined) return found
  const made = figuresOf(state.evaluation)
  known.set(state.evaluation, made)
  return made
}
