import type { Vec3 } from "../../core/solids"
import { inMotion, type SwingMotion } from "../../scene/hills"
import type { Evaluation } from "../../scene/evaluate"
import type { Bench } from "../../state/bench"
import { clockOf, type MotionRun } from "./motionRun"

const DEGREE = Math.PI / 180

/** Shows moments of a run in the main picture. */
export interface Player {
  /** One moment of a run; null shows the bow as it is held again. */
  show(run: MotionRun | null, at: number): void
}

/** `motions` are those that the run's models are of, in the same order. */
export function createPlayer(bench: Bench, motions: readonly SwingMotion[]): Player {
  let shown: MotionRun | null = null
  let of: Evaluation | null = null
  let room: readonly Evaluation[] = []
  let locked: readonly { readonly path: string; readonly direction: Vec3 }[] = []

  const stems = (run: MotionRun, at: number) =>
    new Map(motions.map(({ path, stem }, index) => [path, stem(run.traces[index]!.inBow[at]!)]))
  const moment = (evaluation: Evaluation, run: MotionRun, at: number) =>
    inMotion(evaluation, clockOf(run).slope[at]! / DEGREE, stems(run, at))

  const begin = (run: MotionRun, evaluation: Evaluation) => {
    // A new aim in mid motion goes on with the same bow, but not with one that has been changed since.
    if (shown === null) of = evaluation
    shown = run
    const stillFrom = run.traces[0]!.time.findIndex((time) => time >= run.manoeuvre.end)
    const middle = Math.floor(stillFrom / 2)
    room = [0, middle, Math.max(0, stillFrom)].map((at) => moment(evaluation, run, at))
    locked = motions.map(({ path, stem }, index) => ({ path, direction: stem(run.traces[index]!.inBow[0]!) }))
  }

  return {
    show(run, at) {
      const { evaluation, played } = bench.store.getState()
      if (run === null) {
        shown = null
        if (played !== null) bench.setView({ played: null })
        return
      }
      if (run !== shown) begin(run, evaluation)
      if (of !== evaluation) {
        if (played !== null) bench.setView({ played: null })
        return
      }
      bench.setView({
        played: { of: evaluation, evaluation: moment(evaluation, run, at), hillDeg: run.toDeg, room, locked },
      })
    },
  }
}
