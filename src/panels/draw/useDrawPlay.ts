import { useEffect, useMemo, useState } from "react"
import { setNumber } from "../../commands/numbers"
import { problemText } from "../../describe/problemText"
import type { Scene } from "../../scene/schema"
import type { Bench } from "../../state/bench"
import { draw as words } from "../../words/draw"
import { playedDraw, steppedDraw } from "./playedDraw"

const LABEL = words.play.gesture
const KEY = "pose:draw"
/** A frame that comes later than this, s, goes on from where the last one was: a tab that slept does not jump. */
const LONGEST_FRAME = 0.1

export type PlayState = "still" | "playing" | "paused"

interface Play {
  readonly state: PlayState
  readonly problem: string | null
  play(): void
  /** Keeps the present draw, as one undo step. */
  pause(): void
}

/**
 * Draws the bow, holds and lets it down to where it was, as one gesture that leaves nothing in the history once it is
 * over. Anything else that changes the scene meanwhile ends it, and is kept.
 */
export function useDrawPlay(bench: Bench): Play {
  const [state, setState] = useState<PlayState>("still")
  const [problem, setProblem] = useState<string | null>(null)
  const player = useMemo(() => newPlayer(bench, setState, setProblem), [bench])
  useEffect(() => () => player.end(), [player])
  return { state, problem, play: player.play, pause: player.pause }
}

function newPlayer(bench: Bench, tellState: (state: PlayState) => void, tellProblem: (text: string | null) => void) {
  let frame = 0
  let elapsed = 0
  let last = Number.NaN
  let from = 0
  let calm = false
  let left: Scene | null = null
  let paused = false

  const stop = (state: PlayState) => {
    cancelAnimationFrame(frame)
    frame = 0
    paused = state === "paused"
    tellState(state)
  }
  const ours = () => bench.store.getState().gesture?.label === LABEL
  /** Puts a draw on the bench; false when it was refused, with nothing left open. */
  const put = (value: number): boolean => {
    const { scene } = bench.store.getState()
    if (scene.pose.draw === value) return true
    const result = setNumber.run(bench, { key: KEY, value })
    if (result.ok) return true
    tellProblem(problemText(bench.store.getState(), result.errors))
    bench.cancel()
    stop("still")
    return false
  }
  const tick = (time: number) => {
    if (!ours() || bench.store.getState().scene !== left) {
      if (ours()) bench.commit()
      stop("still")
      return
    }
    elapsed += Number.isNaN(last) ? 0 : Math.min(LONGEST_FRAME, (time - last) / 1000)
    last = time
    const fraction = playedDraw(elapsed, from)
    if (!put(fraction === null ? from : calm ? steppedDraw(fraction) : fraction)) return
    if (fraction === null) {
      bench.commit()
      bench.say(words.play.over)
      stop("still")
      return
    }
    left = bench.store.getState().scene
    frame = requestAnimationFrame(tick)
  }
  return {
    play() {
      if (frame !== 0) return
      const { draw } = bench.store.getState().scene.pose
      if (!paused) {
        // From full draw there is nothing to draw: it begins at brace then.
        from = draw < 1 ? draw : 0
        elapsed = 0
      }
      calm = matchMedia("(prefers-reduced-motion: reduce)").matches
      tellProblem(null)
      tellState("playing")
      bench.begin(LABEL)
      bench.say(words.play.begun)
      left = bench.store.getState().scene
      last = Number.NaN
      frame = requestAnimationFrame(tick)
    },
    pause() {
      if (frame === 0) return
      if (ours()) bench.commit()
      stop("paused")
    },
    /** For a sheet that is put away: the bow is let down at once. */
    end() {
      if (frame === 0) return
      if (ours()) bench.cancel()
      stop("still")
    },
  }
}
