import { useState } from "react"
import { setNumber } from "../commands/numbers"
import { cantText, drawText, slopeText } from "../describe/poseText"
import { useBench, useLive } from "../state/useBench"
import { figures as figureWords } from "../words/figures"
import "./problem.css"
import "./strip.css"
import { useRange } from "./useRange"
import { slotNamed } from "../scene/slots"

/** Slope and cant beyond this are for files and fields; the strip shows them only once a scene has gone there. */
const USUAL_DEGREES = 45
const LIMIT_DEGREES = 90

/** How the bow is held: draw, slope and cant. */
export function PoseStrip() {
  return (
    <div className="pose-strip">
      <PoseSlider of="pose:draw" name={figureWords.draw} words={drawText} from={0} to={1} reset={figureWords.toBrace} />
      <AngleSlider of="pose:slopeDeg" name={figureWords.slope} words={slopeText} reset={figureWords.toLevel} />
      <AngleSlider of="pose:cantDeg" name={figureWords.cant} words={cantText} reset={figureWords.toUpright} />
    </div>
  )
}

interface AngleProps {
  readonly of: string
  readonly name: string
  readonly words: (value: number) => string
  readonly reset: string
}

function AngleSlider(props: AngleProps) {
  const steep = useLive(({ scene }) => Math.abs(slotNamed(scene, props.of)?.value ?? 0) > USUAL_DEGREES)
  const [wide, setWide] = useState(steep)
  // Once wide it stays wide: a scale that shrinks under a dragging hand would throw the value about.
  if (steep && !wide) setWide(true)
  const limit = wide ? LIMIT_DEGREES : USUAL_DEGREES
  return <PoseSlider {...props} from={-limit} to={limit} />
}

function PoseSlider({ of: key, name, words, from, to, reset }: AngleProps & { from: number; to: number }) {
  const bench = useBench()
  const value = useLive(({ scene }) => slotNamed(scene, key)?.value ?? 0)
  const { ref, problem } = useRange(key, value)
  return (
    <div className="pose-slider">
      <div className="pose-slider-line">
        <label>
          <span className="pose-slider-name">{name}</span>
          <input
            ref={ref}
            type="range"
            min={from}
            max={to}
            step={to === 1 ? 0.01 : 1}
            defaultValue={value}
            data-slot={key}
            aria-valuetext={words(value)}
          />
        </label>
        <output className="pose-slider-words">{words(value)}</output>
        <button
          type="button"
          className="pose-slider-reset"
          aria-label={figureWords.reset(name, reset)}
          title={reset}
          onClick={() => setNumber.run(bench, { key, value: 0 })}
        >
          <svg viewBox="0 0 16 16" aria-hidden="true">
            <path d="M3.2 6.2A5.4 5.4 0 1 1 2.6 9M3 2.4v4h4" fill="none" stroke="currentColor" strokeWidth="1.6" />
          </svg>
        </button>
      </div>
      {problem !== null && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
    </div>
  )
}
