import { type Evaluation, evaluate, poseBalance } from "../evaluate"
import type { Scene } from "../schema"
import type { Sensitivity } from "../sensitivity"
import { withValues } from "./change"
import { costOf } from "./cost"
import { type Knob, knobsFor, turned } from "./knobs"
import { overloads } from "./ratedLoad"
import { MARGIN, MARGIN_SHARE, SUGGESTIONS_PER_TARGET } from "./settings"
import { fewestSteps, type Goal } from "./solve"
import { byWorth, type Suggestion } from "./suggestion"
import { type TargetKey, type TargetState, targetStates } from "./targets"

/** A scene with one of its missed targets. */
export interface Missed {
  readonly scene: Scene
  readonly evaluation: Evaluation
  readonly states: readonly TargetState[]
  readonly state: TargetState
}

/** A knob turned one way, and what its rate promises. */
interface Guess {
  readonly knob: Knob
  readonly way: 1 | -1
  /** Change of the figure per step this way. */
  readonly rate: number
  readonly limit: number
  /** It can hardly cost less. */
  readonly leastCost: number
}

/** Of the steps a rate promises, the fewest a figure that is a little curved may really need. */
const LEAST_OF_PROMISED = 0.7

/** The best few changes for one missed target: knobs are tried from the cheapest promise on, until none can win. */
export function bestFor(missed: Missed, rates: ReadonlyMap<string, Sensitivity>): Suggestion[] {
  const goal = goalOf(missed.state)
  const guesses = knobsFor(missed.state.key, missed.scene).flatMap((knob) => guessesOf(knob, missed.state, goal, rates))
  guesses.sort((a, b) => a.leastCost - b.leastCost)
  let best: Suggestion[] = []
  for (const guess of guesses) {
    const last = best[SUGGESTIONS_PER_TARGET - 1]
    if (last !== undefined && last.breaks.length === 0 && guess.leastCost > last.cost) break
    const found = suggestionOf(guess, missed, goal)
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

/**
 * The ways worth trying. Discs and lengths change a figure nearly evenly, so only the way their rate points, and only
 * where that promises the goal within twice the limit. Angles go round: both ways are tried, however flat they start,
 * and may be done in one step.
 */
function guessesOf(knob: Knob, state: TargetState, goal: Goal, rates: ReadonlyMap<string, Sensitivity>): Guess[] {
  const perStep = knob.moves.reduce((sum, { slot, perStep: step }) => {
    const rate = rates.get(slot.key)
    return sum + (rate === undefined ? 0 : step * figureRate(state.key, rate))
  }, 0)
  const wanted = (state.missedBy > 0 ? goal.max : goal.min) - state.value
  const goesRound = knob.kind === "splay" || knob.kind === "droop"
  return ([1, -1] as const).flatMap((way) => {
    const limit = way > 0 ? knob.most : -knob.least
    const rate = way * perStep
    const promised = Math.ceil(wanted / rate)
    if (limit < 1 || !(goesRound || (promised >= 1 && promised <= 2 * limit))) return []
    const fewest = goesRound ? 1 : Math.max(1, Math.floor(Math.min(promised, limit) * LEAST_OF_PROMISED))
    return [{ knob, way, rate, limit, leastCost: costOf(knob, way * fewest) }]
  })
}

function figureRate(key: TargetKey, rate: Sensitivity): number {
  switch (key) {
    case "forwardMm":
      return rate.centreMm[0]
    case "upMm":
      return rate.centreMm[1]
    case "sideMm":
      return rate.centreMm[2]
    case "massMaxG":
      return rate.massG
    case "netLiftNm":
      return rate.fullDraw.netLiftNm
  }
}

function suggestionOf({ knob, way, rate, limit }: Guess, missed: Missed, goal: Goal): Suggestion | null {
  const { scene, state, states } = missed
  const changed = (steps: number) => withValues(scene, turned(knob, way * steps))
  const steps = fewestSteps(
    (count) => (count === 0 ? state.value : quickFigure(state.key, changed(count), missed)),
    rate,
    limit,
    goal,
  )
  if (steps === null) return null
  const after = changed(steps)
  const evaluated = overloads(scene, after) ? null : evaluate(after)
  if (evaluated === null || !evaluated.ok) return null
  const statesAfter = targetStates(after, evaluated.value)
  const brought = statesAfter.find(({ key }) => key === state.key)
  if (brought === undefined || brought.missedBy !== 0) return null
  const changes = turned(knob, way * steps)
  return {
    id: [state.key, knob.kind, ...changes.map(({ key }) => key)].join(" "),
    target: state.key,
    kind: knob.kind,
    changes,
    from: knob.moves.map(({ slot }) => slot.value),
    predicted: { before: state.value, after: brought.value },
    breaks: statesAfter
      .filter(({ key, missedBy }) => missedBy !== 0 && states.some((was) => was.key === key && was.missedBy === 0))
      .map(({ key }) => key),
    cost: costOf(knob, way * steps),
  }
}

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
