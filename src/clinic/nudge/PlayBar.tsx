import { useEffect, useRef } from "react"
import { momentText } from "../../describe/nudgeText"
import { Choice } from "../../panels/Choice"
import { success } from "../../scene/errors"
import { SAMPLE_S } from "../../scene/nudge"
import { nudge } from "../../words/nudge"
import { ask, useAsked } from "./asked"
import type { Clock } from "./clock"
import { useCalm, usePlaying } from "./usePlaying"

/** One press of a step button, s. */
const STEP_S = 0.01
const done = success(undefined)

/** Plays the time, slowly if wanted, halts it, and steps it on and back; its slider takes arrow keys. */
export function PlayBar({ clock, end }: { readonly clock: Clock; readonly end: number }) {
  const { kind, slowness } = useAsked()
  const calm = useCalm()
  const { playing, play, pause } = usePlaying(clock, Number(slowness))
  const slider = useRef<HTMLInputElement>(null)
  const words = useRef<HTMLOutputElement>(null)
  useEffect(
    () =>
      clock.watch((time) => {
        const text = momentText(time)
        if (words.current !== null) words.current.textContent = text
        if (slider.current === null) return
        slider.current.value = String(time)
        slider.current.setAttribute("aria-valuetext", text)
      }),
    [clock],
  )
  const step = (by: number) => {
    pause()
    // Whole steps, wherever playing was halted.
    clock.seek(Math.round(clock.now() / STEP_S + by) * STEP_S)
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
