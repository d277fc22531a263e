import { useEffect, useRef, useState } from "react"
import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import type { ScreenSide } from "../../core/measure/instruments"
import { said } from "../../describe/format"
import { useBench, useLive } from "../../state/useBench"
import { measureSheet } from "../../words/measureSheet"
import { readingSteps } from "../../words/readingSteps"
import { Choice } from "../Choice"
import { Problem } from "../Problem"
import { changeDraftValues } from "./PointPicker"
import { changeDraft } from "./drafts"
import { announced } from "./restNews"
import { useTilt } from "./useTilt"

const { tilt: words } = measureSheet

/** To a tenth of a degree: finer than the sensor is. */
const tenth = (radians: number): number => Math.round((radians / DEGREE) * 10) / 10 + 0

/** Reads the tilt off the device's own sensor: leave is asked, the bow zeroed level and upright, then any rest is taken. */
export function TiltSensor() {
  const bench = useBench()
  const units = useLive(({ preferences }) => preferences)
  const { state, steadiness, zero, tilt, start, stop, setZero } = useTilt()
  const [side, setSide] = useState<ScreenSide>("right")
  const [askew, setAskew] = useState(false)
  const told = useRef(false)
  const { steady } = steadiness
  const take = () => {
    if (tilt === null) return
    const values = { slopeDeg: tenth(tilt.slope), cantDeg: tenth(tilt.cant) }
    changeDraftValues(values)
    changeDraft("reading", { cantRead: true })
    bench.say(words.taken(said(values.slopeDeg, "angle", units), said(values.cantDeg, "angle", units)))
  }
  useEffect(() => {
    const now = announced(told.current, steadiness)
    if (now && !told.current) bench.say(zero === null ? words.restForZero : words.restForTilt)
    told.current = now
  }, [steadiness, zero, bench])

  if (state === "off" || state === "missing" || state === "refused" || state === "silent") {
    return (
      <div className="tilt-sensor">
        <button type="button" onClick={start}>
          {words.use}
        </button>
        <Problem text={state === "off" ? null : readingSteps.sensor[state]} />
      </div>
    )
  }
  return (
    <div className="tilt-sensor">
      <p className="measure-note">{zero === null ? words.zeroFirst : words.hang}</p>
      <Choice
        name={words.side}
        value={side}
        options={[
          ["right", words.right],
          ["left", words.left],
        ]}
        onChoose={(value) => {
          setSide(value)
          return { ok: true, value: undefined }
        }}
      />
      <p className="tilt-now" data-steady={steady}>
        {tilt === null
          ? words.notZeroed
          : words.now(said(tenth(tilt.slope), "angle", units), said(tenth(tilt.cant), "angle", units))}
        <span>{steady ? words.atRest : state === "asking" ? words.asking : words.moving}</span>
      </p>
      <div className="measure-buttons">
        <button type="button" aria-disabled={!steady} onClick={() => steady && setAskew(!setZero(side))}>
          {zero === null ? words.setZero : words.setZeroAgain}
        </button>
        <button type="button" aria-disabled={!steady || zero === null} onClick={() => steady && take()}>
          {words.take}
        </button>
        <button type="button" onClick={stop}>
          {words.off}
        </button>
      </div>
      <Problem text={askew ? readingSteps.sensor.askew : null} />
    </div>
  )
}
