import { useEffect, useRef, useState } from "react"
import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import type { ScreenSide } from "../../core/measure/instruments"
import { said } from "../../describe/format"
import { useBench, useLive } from "../../state/useBench"
import { readingSteps } from "../../words/readingSteps"
import { Choice } from "../Choice"
import { Problem } from "../Problem"
import { changeDraftValues } from "./PointPicker"
import { changeDraft } from "./drafts"
import { useTilt } from "./useTilt"

/** To a tenth of a degree: finer than the sensor is. */
const tenth = (radians: number): number => Math.round((radians / DEGREE) * 10) / 10 + 0

/** Reads the tilt off the device's own sensor: leave is asked, the bow zeroed level and upright, then any rest is taken. */
export function TiltSensor() {
  const bench = useBench()
  const units = useLive(({ preferences }) => preferences)
  const { state, steadiness, zero, tilt, start, stop, setZero } = useTilt()
  const [side, setSide] = useState<ScreenSide>("right")
  const [askew, setAskew] = useState(false)
  const rested = useRef(false)
  const { steady } = steadiness
  const take = () => {
    if (tilt === null) return
    const values = { slopeDeg: tenth(tilt.slope), cantDeg: tenth(tilt.cant) }
    changeDraftValues(values)
    changeDraft("reading", { cantRead: true })
    bench.say(
      `Tilt taken: slope ${said(values.slopeDeg, "angle", units)}, cant ${said(values.cantDeg, "angle", units)}`,
    )
  }
  useEffect(() => {
    if (steady && !rested.current)
      bench.say(zero === null ? "At rest. Zero can be set." : "At rest. The tilt can be taken.")
    rested.current = steady
  }, [steady, zero, bench])

  if (state === "off" || state === "missing" || state === "refused" || state === "silent") {
    return (
      <div className="tilt-sensor">
        <button type="button" onClick={start}>
          Use this device's tilt sensor
        </button>
        <Problem text={state === "off" ? null : readingSteps.sensor[state]} />
      </div>
    )
  }
  return (
    <div className="tilt-sensor">
      <p className="measure-note">
        {zero === null
          ? "First zero it: lay the device flat on the bow's side, screen outwards, and fix it there. Hold the bow level and upright, the string along a plumb line, until it is at rest."
          : "Leave the device where it is, hang the bow and let it come to rest."}
      </p>
      <Choice
        name="The screen looks to the archer's"
        value={side}
        options={[
          ["right", "Right"],
          ["left", "Left"],
        ]}
        onChoose={(value) => {
          setSide(value)
          return { ok: true, value: undefined }
        }}
      />
      <p className="tilt-now" data-steady={steady}>
        {tilt === null
          ? "Not zeroed yet"
          : `Slope ${said(tenth(tilt.slope), "angle", units)}, cant ${said(tenth(tilt.cant), "angle", units)}`}
        <span>{steady ? "at rest" : state === "asking" ? "asking…" : "moving…"}</span>
      </p>
      <div className="measure-buttons">
        <button type="button" aria-disabled={!steady} onClick={() => steady && setAskew(!setZero(side))}>
          {zero === null ? "Set zero" : "Set zero again"}
        </button>
        <button type="button" aria-disabled={!steady || zero === null} onClick={() => steady && take()}>
          Take the tilt
        </button>
        <button type="button" onClick={stop}>
          Sensor off
        </button>
      </div>
      <Problem text={askew ? readingSteps.sensor.askew : null} />
    </div>
  )
}
