import type { NudgeTrace } from "../../core/nudge"
import type { Evaluation } from "../../scene/evaluate"
import { inMotion } from "../../scene/hills"
import { anglesAt } from "../../scene/nudge"
import type { Bench } from "../../state/bench"
import type { Clock } from "./clock"

const DEGREE = Math.PI / 180

/**
 * Shows in the main picture how the front of `of`, the bow on the bench, drops: as `shot`, the same bow just after the
 * shot, for as long as the clock is between start and end and nothing changes on the bench. Swing weights stay in their
 * joints. Begins when the clock moves; the returned function ends it.
 */
export function playDrop(bench: Bench, of: Evaluation, shot: Evaluation, trace: NudgeTrace, clock: Clock): () => void {
  const at = (pitch: number) => inMotion(shot, pitch / DEGREE, new Map())
  const last = trace.angles.at(-1)![2]
  const room = [0, last / 2, last].map(at)
  const end = () => {
    const { played } = bench.store.getState()
    if (played?.of === of) bench.setView({ played: null })
  }
  let from = clock.now()
  const leave = clock.watch((time) => {
    if (time === from) return
    from = time
    if (bench.store.getState().evaluation !== of) return
    if (time <= 0 || time >= clock.end()) end()
    else bench.setView({ played: { of, evaluation: at(anglesAt(trace, time)[2]), hillDeg: 0, room, locked: [] } })
  })
  return () => {
    leave()
    end()
  }
}
