import { type RefObject, useEffect, useRef, useState } from "react"
import type { MotionModel } from "../../core/swing/motion"
import { type Aim, beginRun, type MotionRun, SAMPLES_A_SECOND, turnRun } from "./motionRun"

/** A frame that comes later than this, s, goes on from where the last one was: a tab that slept does not jump. */
const LONGEST_FRAME = 0.1

interface Running {
  readonly run: MotionRun | null
  readonly going: boolean
  /** How many samples have passed. */
  readonly count: RefObject<number>
  /** Raises or lowers the bow to another slope, from what it does now. */
  aim(aim: Aim): void
  reset(): void
}

/** Plays runs of one model in real time; `draw` is called at every frame with the samples that have passed. */
export function useMotionRun(
  model: MotionModel,
  startDeg: number,
  draw: (run: MotionRun, count: number) => void,
): Running {
  const [run, setRun] = useState<MotionRun | null>(null)
  const [going, setGoing] = useState(false)
  const count = useRef(1)
  const elapsed = useRef(0)
  const drawing = useRef(draw)
  useEffect(() => {
    drawing.current = draw
  })

  useEffect(() => {
    if (run === null || !going) return
    let last = Number.NaN
    let frame = 0
    const total = run.trace.time.length
    const calm = matchMedia("(prefers-reduced-motion: reduce)").matches
    const tick = (time: number) => {
      elapsed.current += Number.isNaN(last) ? 0 : Math.min(LONGEST_FRAME, (time - last) / 1000)
      last = time
      // Where less motion is wanted, the whole run stands at once.
      if (calm) elapsed.current = total / SAMPLES_A_SECOND
      count.current = Math.min(total, Math.floor(elapsed.current * SAMPLES_A_SECOND) + 1)
      drawing.current(run, count.current)
      if (count.current >= total) setGoing(false)
      else frame = requestAnimationFrame(tick)
    }
    frame = requestAnimationFrame(tick)
    return () => cancelAnimationFrame(frame)
  }, [run, going])

  return {
    run,
    going,
    count,
    aim(aim) {
      if (run !== null && going) {
        setRun(turnRun(run, elapsed.current, aim))
        return
      }
      const last = run?.trace
      const from = last === undefined ? startDeg : (last.slope.at(-1)! * 180) / Math.PI
      elapsed.current = 0
      count.current = 1
      setRun(beginRun(model, from, aim, last?.inBow.at(-1)))
      setGoing(true)
    },
    reset() {
      elapsed.current = 0
      count.current = 1
      setGoing(false)
      setRun(null)
    },
  }
}
