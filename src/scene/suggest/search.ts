import { type Evaluation, evaluate, poseBalance } from "../evaluate"
import type { Scene } from "../schema"
import type { Sensitivity } from "../sensitivity"
import { overloads } from "./ratedLoad"
import { MARGIN, MARGIN_SHARE, SUGGESTIONS_PER_TARGET } from "./settings"
import { fewestSteps, type Goal } from "./solve"
import { byWorth, changedBy, type RigChange, type Suggestion } from "./suggestion"
import { type TargetKey, type TargetState, targetStates } from "./targets"
import { type Way, waysFor } from "./ways"

/** A scene with one of its missed targets. */
export interface Missed {
  readonly scene: Scene
  readonly evaluation: Evaluation
  readonly states: readonly TargetState[]
  readonly state: TargetState
}

/** The best few changes for one missed target: ways are tried from the cheapest promise on, until none can win. */
export function bestFor(missed: Missed, rates: ReadonlyMap<string, Sensitivity>): Suggestion[] {
  const goal = goalOf(missed.state)
  let best: Suggestion[] = []
  for (const way of waysFor(missed.scene, missed.state, goal, rates)) {
    const last = best[SUGGESTIONS_PER_TARGET - 1]
    if (last !== undefined && last.breaks.length === 0 && way.leastCost > last.cost) break
    const found = suggestionOf(way, missed, goal)
    if (found === null) continue
    // Both ways of one knob may do; the better is enough.
    const others = best.filter((suggestion) => suggestion.id !== found.id)
    const rival = best.find((suggestion) => suggestion.id === found.id)
    const better = rival !== undefined && byWorth(rival, found) <= 0 ? rival : found
    best = [...others, better].sort(byWorth).slice(0, SUGGESTIONS_PER_TARGET)
  }
  return best
}

function goalOf({ key, min, max }: TargetState): Goal {
  const margin = Math.min(MARGIN[key], (max - min) * MARGIN_SHARE)
  return { min: min + margin, max: max - margin }
}

function suggestionOf(way: Way, missed: Missed, goal: Goal): Suggestion | null {
  const { scene, state, states } = missed
  const figure = (steps: number) =>
    steps === 0 ? state.value : quickFigure(state.key, changedBy(scene, way.change(steps)), missed)
  const rate = way.rate ?? figure(1) - state.value
  const steps = fewestSteps(figure, rate, way.limit, goal)
  if (steps === null) return null
  const change = way.change(steps)
  const after = changedBy(scene, change)
  const evaluated = overloads(scene, after) ? null : evaluate(after)
  if (evaluated === null || !evaluated.ok) return null
  const statesAfter = targetStates(after, evaluated.value)
  const brought = statesAfter.find(({ key }) => key === state.key)
  if (brought === undefined || brought.missedBy !== 0) return null
  return {
    ...change,
    id: [state.key, change.kind, ...placesOf(change)].join(" "),
    target: state.key,
    predicted: { before: state.value, after: brought.value },
    breaks: statesAfter
      .filter(({ key, missedBy }) => missedBy !== 0 && states.some((was) => was.key === key && was.missedBy === 0))
      .map(({ key }) => key),
    cost: way.cost(steps),
  }
}

const placesOf = (change: RigChange): string[] =>
  "edits" in change ? change.edits.map(({ path, index }) => `${path}[${index}]`) : change.changes.map(({ key }) => key)

/**
 * A target's figure for a scene that differs from the evaluated one in its rig only. The bow is as it was, so its
 * limbs stay where they are and the lift of the line of pull keeps its value.
 */
function quickFigure(key: TargetKey, changed: Scene, { evaluation }: Missed): number {
  const { now, fullDraw } = evaluation
  if (key === "netLiftNm") return fullDraw.lift - poseBalance(changed, fullDraw.limbs, fullDraw.pose).noseDown
  const { mass, centre } = poseBalance(changed, now.limbs, now.pose)
  switch (key) {
    case "forwardMm":
      return centre[0] * 1e3
    case "upMm":
      return centre[1] * 1e3
    case "sideMm":
      return centre[2] * 1e3
    case "massMaxG":
      return mass * 1e3
  }
}
