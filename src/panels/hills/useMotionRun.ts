import { type RefObject, useEffect, useRef, useState } from "react"
import type { MotionModel } from "../../core/swing/motion"
import { type Aim, beginRun, clockOf, type MotionRun, SAMPLES_A_SECOND, turnRun } from "./motionRun"

/** A frame that comes later than this, s, goes on from where the last one was: a tab that slept does not jump. */
const LONGEST_FRAME = 0.1
/** Where less motion is wanted, a press goes this many samples on or back: a fifth of a second. */
const STEP = SAMPLES_A_SECOND / 5

interface Running {
  readonly run: MotionRun | null
  readonly going: boolean
  /** Less motion is wanted: the run stands whole at once, and is looked at step by step. */
  readonly calm: boolean
  /** How many samples have passed. */
  readonly count: RefObject<number>
  /** The sample that is looked at. */
  readonly at: number
  /** Raises or lowers the bow to another slope, from what it does now. */
  aim(aim: Aim): void
  /** One step back (-1) or on (1). */
  step(by: -1 | 1): void
  reset(): void
}

const wantsCalm = (): boolean => matchMedia("(prefers-reduced-motion: reduce)").matches

/**
 * Plays runs of the same models in real time; `draw` is called at every frame with the samples that have passed and the
 * one that is looked at, and with null once there is nothing more to be seen of it.
 */
export function useMotionRun(
  models: readonly MotionModel[],
  startDeg: number,
  draw: (run: MotionRun | null, count: number, at: number) => void,
): Running {
  const [run, setRun] = useState<MotionRun | null>(null)
  const [going, setGoing] = useState(false)
  const [calm, setCalm] = useState(wantsCalm)
  const [looked, setLooked] = useState(0)
  const count = useRef(1)
  const elapsed = useRef(0)
  const drawing = useRef(draw)
  useEffect(() => {
    drawing.current = draw
  })
  useEffect(() => () => drawing.current(null, 0, 0), [])

  useEffect(() => {
    if (run === null || !going) return
    let last = Number.NaN
    let frame = 0
    const total = clockOf(run).time.length
    const tick = (time: number) => {
      elapsed.current += Number.isNaN(last) ? 0 : Math.min(LONGEST_FRAME, (time - last) / 1000)
      last = time
      count.current = Math.min(total, Math.floor(elapsed.current * SAMPLES_A_SECOND) + 1)
      drawing.current(run, count.current, count.current - 1)
      if (count.current < total) {
        frame = requestAnimationFrame(tick)
        return
      }
      setGoing(false)
      drawing.current(null, total, total - 1)
    }
    frame = requestAnimationFrame(tick)
    return () => cancelAnimationFrame(frame)
  }, [run, going])

  useEffect(() => {
    if (run !== null && calm) drawing.current(run, count.current, looked)
  }, [run, calm, looked])

  const last = run === null ? 0 : clockOf(run).time.length - 1
  return {
    run,
    going,
    calm,
    count,
    at: calm ? looked : Math.max(0, count.current - 1),
    aim(aim) {
      const calmNow = wantsCalm()
      setCalm(calmNow)
      if (run !== null && going) {
        setRun(turnRun(run, elapsed.current, aim))
        return
      }
      const from = run === null ? startDeg : (clockOf(run).slope.at(-1)! * 180) / Math.PI
      const next = beginRun(
        models,
        from,
        aim,
        run?.traces.map(({ inBow }) => inBow.at(-1)!),
      )
      elapsed.current = 0
      count.current = calmNow ? clockOf(next).time.length : 1
      setLooked(0)
      setRun(next)
      setGoing(!calmNow)
    },
    step: (by) => setLooked((now) => Math.min(last, Math.max(0, now + by * STEP))),
    reset() {
      elapsed.current = 0
      count.current = 1
      setLooked(0)
      setGoing(false)
      setRun(null)
      drawing.current(null, 0, 0)
    },
  }
}
