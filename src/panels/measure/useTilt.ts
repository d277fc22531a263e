import { useCallback, useEffect, useRef, useState } from "react"
import {
  downInPhone,
  type ScreenSide,
  type Steadiness,
  steadier,
  tiltFrom,
  UNSTEADY,
  type Zero,
  zeroAt,
} from "../../core/measure/instruments"
import type { Attitude } from "../../core/measure"

/** What the sensor is doing: nothing yet, asked for leave, giving readings, or not to be had. */
export type SensorState = "off" | "asking" | "on" | "missing" | "refused" | "silent"

/** A device that has said nothing for this long has no sensor, ms. */
const SILENT_MS = 3000

interface Asking {
  requestPermission?: () => Promise<"granted" | "denied">
}

export interface Tilt {
  readonly state: SensorState
  /** Last reading, and whether the device is at rest. */
  readonly steadiness: Steadiness
  readonly zero: Zero | null
  /** Slope and cant of the bow since it was zeroed, from the mean of the last readings. */
  readonly tilt: Attitude | null
  start(): void
  stop(): void
  /** Takes the present rest as level and upright; false when forward cannot be told from it. */
  setZero(side: ScreenSide): boolean
}

/** The zeroing outlives the sheet: the phone stays on the bow while the coach looks elsewhere. */
let keptZero: Zero | null = null

/** The device's tilt sensor, with its permission, and steadied. Readings are only taken while it is on. */
export function useTilt(): Tilt {
  const [state, setState] = useState<SensorState>("off")
  const [steadiness, setSteadiness] = useState<Steadiness>(UNSTEADY)
  const [zero, setZeroState] = useState<Zero | null>(keptZero)
  const latest = useRef(UNSTEADY)

  useEffect(() => {
    if (state !== "on") return
    let heard = false
    const read = ({ beta, gamma, timeStamp }: DeviceOrientationEvent) => {
      if (beta === null || gamma === null) return
      heard = true
      latest.current = steadier(latest.current, { at: timeStamp, down: downInPhone(beta, gamma) })
      setSteadiness(latest.current)
    }
    window.addEventListener("deviceorientation", read)
    const timer = setTimeout(() => {
      if (!heard) setState("silent")
    }, SILENT_MS)
    return () => {
      window.removeEventListener("deviceorientation", read)
      clearTimeout(timer)
    }
  }, [state])

  const start = useCallback(() => {
    if (!("DeviceOrientationEvent" in window)) {
      setState("missing")
      return
    }
    latest.current = UNSTEADY
    setSteadiness(UNSTEADY)
    const { requestPermission } = DeviceOrientationEvent as unknown as Asking
    if (requestPermission === undefined) {
      setState("on")
      return
    }
    setState("asking")
    requestPermission().then(
      (answer) => setState(answer === "granted" ? "on" : "refused"),
      () => setState("refused"),
    )
  }, [])
  const stop = useCallback(() => setState("off"), [])
  const setZero = useCallback((side: ScreenSide) => {
    const { mean } = latest.current
    const found = mean === null ? null : zeroAt(mean, side)
    if (found === null) return false
    keptZero = found
    setZeroState(found)
    latest.current = UNSTEADY
    setSteadiness(UNSTEADY)
    return true
  }, [])
  const { mean } = steadiness
  return {
    state,
    steadiness,
    zero,
    tilt: zero === null || mean === null ? null : tiltFrom(zero, mean),
    start,
    stop,
    setZero,
  }
}
