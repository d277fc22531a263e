import { useCallback, useEffect, useRef } from "react"
import { momentText } from "../../describe/nudgeText"
import { Choice } from "../../panels/Choice"
import { whenQuiet } from "../../panels/whenQuiet"
import { success } from "../../scene/errors"
import { SAMPLE_S } from "../../scene/nudge"
import { useBench } from "../../state/useBench"
import { nudge } from "../../words/nudge"
import { ask, useAsked } from "./asked"
import type { Clock } from "./clock"
import { useCalm, usePlaying } from "./usePlaying"

/** One press of a step button, s. */
const STEP_S = 0.01
const done = success(undefined)

interface Props {
  readonly clock: Clock
  readonly end: number
  /** How the bows stand at a time, in words. */
  tell(time: number): string
}

/**
 * Plays the time, slowly if wanted, halts it, and steps it on and back; its slider takes arrow keys. Where playing or
 * steps come to rest is said once; what the slider itself is moved to, the slider says.
 */
export function PlayBar({ clock, end, tell }: Props) {
  const bench = useBench()
  const { kind, slowness } = useAsked()
  const calm = useCalm()
  const { playing, play, pause } = usePlaying(clock, Number(slowness))
  const slider = useRef<HTMLInputElement>(null)
  const words = useRef<HTMLOutputElement>(null)
  const byHand = useRef(false)
  useEffect(() => {
    const value = () => slider.current?.setAttribute("aria-valuetext", momentText(clock.now()))
    let settling: (() => void) | undefined
    const leave = clock.watch((time) => {
      if (words.current !== null) words.current.textContent = momentText(time)
      if (slider.current !== null) slider.current.value = String(time)
      settling?.()
      settling = undefined
      if (byHand.current) value()
      else settling = whenQuiet(value)
    })
    value()
    return () => {
      leave()
      settling?.()
    }
  }, [clock])

  const telling = useRef<(() => void) | undefined>(undefined)
  const latest = useRef(tell)
  useEffect(() => {
    latest.current = tell
  })
  const tellSoon = useCallback(() => {
    telling.current?.()
    telling.current = whenQuiet(() => bench.say(latest.current(clock.now())))
  }, [bench, clock])
  // However playing was halted, but by the slider.
  useEffect(() => {
    if (!playing) return
    byHand.current = false
    return () => {
      if (!byHand.current) tellSoon()
    }
  }, [playing, tellSoon])
  // After the others, whose ends may want something said.
  useEffect(() => () => telling.current?.(), [])

  const step = (by: number) => {
    byHand.current = false
    pause()
    // Whole steps, wherever playing was halted.
    clock.seek(Math.round(clock.now() / STEP_S + by) * STEP_S)
    tellSoon()
  }
  return (
    <div className="nudge-player">
      <div className="hills-buttons">
        <button type="button" onClick={() => step(-1)}>
          {nudge.back}
        </button>
        {!calm && (
          <button type="button" className="nudge-play" onClick={playing ? pause : play}>
            {playing ? nudge.pause : nudge.play}
          </button>
        )}
        <button type="button" onClick={() => step(1)}>
          {nudge.on}
        </button>
      </div>
      <div className="nudge-scrubbing">
        <input
          ref={slider}
          className="nudge-scrubber"
          type="range"
          aria-label={kind === "drop" ? nudge.timeOfDrop : nudge.time}
          min={0}
          max={end}
          step={SAMPLE_S}
          defaultValue={0}
          onInput={(event) => {
            byHand.current = true
            telling.current?.()
            pause()
            clock.seek(event.currentTarget.valueAsNumber)
          }}
        />
        <output ref={words} className="nudge-time" aria-live="off" />
      </div>
      {calm ? (
        <p className="hills-note">{nudge.calm}</p>
      ) : (
        <Choice
          name={nudge.speed}
          value={slowness}
          options={[
            ["1", nudge.speeds[1]],
            ["10", nudge.speeds[10]],
            ["100", nudge.speeds[100]],
          ]}
          onChoose={(chosen) => {
            ask({ slowness: chosen })
            return done
          }}
        />
      )}
    </div>
  )
}
