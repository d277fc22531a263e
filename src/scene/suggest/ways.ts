import type { Scene } from "../schema"
import type { Sensitivity } from "../sensitivity"
import { costOf } from "./cost"
import { type Knob, knobsFor, turned } from "./knobs"
import type { Goal } from "./solve"
import { type Structure, structuresFor } from "./structures"
import type { RigChange } from "./suggestion"
import type { TargetKey, TargetState } from "./targets"

/** One way to change the rig, in whole steps that may bring a missed target inside, and what it promises. */
export interface Way {
  readonly kind: RigChange["kind"]
  /** Steps allowed: 1 … `limit`. */
  readonly limit: number
  /** Change of the figure per step at the start; null where only trying tells. */
  readonly rate: number | null
  /** It can hardly cost less. */
  readonly leastCost: number
  change(steps: number): RigChange
  cost(steps: number): number
}

/** All ways worth trying for a target, those that promise to be cheapest first. */
export function waysFor(scene: Scene, state: TargetState, goal: Goal, rates: ReadonlyMap<string, Sensitivity>): Way[] {
  const turns = knobsFor(state.key, scene).flatMap((knob) => turnsOf(knob, state, goal, rates))
  return [...turns, ...structuresFor(state.key, scene).map(building)].sort((a, b) => a.leastCost - b.leastCost)
}

const building = ({ kind, sizes, edits, cost }: Structure): Way => ({
  kind,
  limit: sizes,
  rate: null,
  leastCost: cost(1),
  change: (size) => ({ kind, edits: edits(size) }),
  cost,
})

/** Of the steps a rate promises, the fewest a figure that is a little curved may really need. */
const LEAST_OF_PROMISED = 0.7

/**
 * The ways to turn a knob that are worth trying. Discs and lengths change a figure nearly evenly, so only the way
 * their rate points, and only where that promises the goal within twice the limit. Angles go round: both ways are
 * tried, however flat they start, and may be done in one step.
 */
function turnsOf(knob: Knob, state: TargetState, goal: Goal, rates: ReadonlyMap<string, Sensitivity>): Way[] {
  const perStep = knob.moves.reduce((sum, { slot, perStep: step }) => {
    const rate = rates.get(slot.key)
    return sum + (rate === undefined ? 0 : step * figureRate(state.key, rate))
  }, 0)
  const wanted = (state.missedBy > 0 ? goal.max : goal.min) - state.value
  const goesRound = knob.kind === "splay" || knob.kind === "droop"
  return ([1, -1] as const).flatMap((sign) => {
    const limit = sign > 0 ? knob.most : -knob.least
    const rate = sign * perStep
    const promised = Math.ceil(wanted / rate)
    if (limit < 1 || !(goesRound || (promised >= 1 && promised <= 2 * limit))) return []
    const fewest = goesRound ? 1 : Math.max(1, Math.floor(Math.min(promised, limit) * LEAST_OF_PROMISED))
    const cost = (steps: number) => costOf(knob, sign * steps)
    const from = knob.moves.map(({ slot }) => slot.value)
    const change = (steps: number) => ({ kind: knob.kind, changes: turned(knob, sign * steps), from })
    return [{ kind: knob.kind, limit, rate, leastCost: cost(fewest), change, cost }]
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
