import type { NudgeTrace } from "../../core/nudge"
import type { Tensor } from "../../core/solids"
import { type Result, success } from "../../scene/errors"
import type { Evaluation, PoseBalance } from "../../scene/evaluate"
import { noseDrops, nudgeTrace, type NudgeQuestion, quickTensor } from "../../scene/nudge"
import type { Beside } from "../../state/compared"
import { nudge } from "../../words/nudge"

/** A nudge, or the drop after the shot, of which nothing more is asked. */
export type WatchQuestion = Omit<NudgeQuestion, "kind"> & { readonly kind: NudgeQuestion["kind"] | "drop" }

/** One of the bows that are watched, with how it turns. */
export interface Watched {
  readonly which: "now" | "held"
  /** As it stands in plots and tables. */
  readonly name: string
  readonly evaluation: Evaluation
  /** The bow just after the shot, where that is what is watched. */
  readonly shot: Evaluation | null
  /** The bow as it is while it turns. */
  readonly balance: PoseBalance
  readonly tensor: Tensor
  readonly trace: NudgeTrace
}

/** Follows the present bow, and the one beside it if there is one, through what is asked. */
export function watch(evaluation: Evaluation, beside: Beside | null, asked: WatchQuestion): Result<readonly Watched[]> {
  const bows = [
    { which: "now", name: nudge.bows.now, evaluation } as const,
    ...(beside === null ? [] : [{ which: "held", name: nudge.bows.held, evaluation: beside.evaluation } as const]),
  ]
  if (asked.kind === "drop") {
    const drops = noseDrops(bows.map((bow) => bow.evaluation))
    if (!drops.ok) return drops
    return success(
      drops.value.map(({ bow: { evaluation: shot }, trace }, index) => ({
        ...bows[index]!,
        shot,
        balance: shot.now,
        tensor: quickTensor(shot.now),
        trace,
      })),
    )
  }
  const watched: Watched[] = []
  for (const bow of bows) {
    const trace = nudgeTrace(bow.evaluation, { ...asked, kind: asked.kind })
    if (!trace.ok) return trace
    const balance = bow.evaluation.fullDraw
    watched.push({ ...bow, shot: null, balance, tensor: quickTensor(balance), trace: trace.value })
  }
  return success(watched)
}

/** Seconds that traces of the same bows last. */
export const lastingOf = ({ trace }: Watched): number => (trace.angles.length - 1) * trace.step
