import { useEffect, useState } from "react"
import type { Clock } from "./clock"

/** A frame that comes later than this, s, goes on from where the last one was: a tab that slept does not jump. */
const LONGEST_FRAME = 0.1

interface Playing {
  readonly playing: boolean
  /** From where it stands, or from the start once it is over. */
  play(): void
  pause(): void
}

/** Runs a clock `slowness` times slower than the world does. */
export function usePlaying(clock: Clock, slowness: number): Playing {
  const [playing, setPlaying] = useState(false)
  useEffect(() => {
    if (!playing) return
    let last = Number.NaN
    let frame = 0
    const tick = (time: number) => {
      const passed = Number.isNaN(last) ? 0 : Math.min(LONGEST_FRAME, (time - last) / 1000)
      last = time
      clock.seek(clock.now() + passed / slowness)
      if (clock.now() >= clock.end()) setPlaying(false)
      else frame = requestAnimationFrame(tick)
    }
    frame = requestAnimationFrame(tick)
    return () => cancelAnimationFrame(frame)
  }, [clock, playing, slowness])
  return {
    playing,
    play() {
      if (clock.now() >= clock.end()) clock.seek(0)
      setPlaying(true)
    },
    pause: () => setPlaying(false),
  }
}

const calmly = "(prefers-reduced-motion: reduce)"

/** Whether less motion is wanted, followed while the page is open. */
export function useCalm(): boolean {
  const [calm, setCalm] = useState(() => matchMedia(calmly).matches)
  useEffect(() => {
    const query = matchMedia(calmly)
    const told = () => setCalm(query.matches)
    query.addEventListener("change", told)
    return () => query.removeEventListener("change", told)
  }, [])
  return calm
}
