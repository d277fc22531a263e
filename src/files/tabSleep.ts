import type { SleepWatch } from "../state/finder"

/** How often the page looks at the clock, ms, and from what gap on it has not been awake in between. */
export const LOOK_EVERY = 1_000
export const GAP = 10_000

/**
 * Tells of times in which the page stood still: it was frozen and resumed, or neither a timer nor a sign of life came
 * for long, as on a machine that slept. A tab in the background whose work went on has not slept.
 */
export const watchSleep: SleepWatch = (woken) => {
  let last = Date.now()
  const look = () => {
    const gap = Date.now() - last
    last = Date.now()
    if (gap > GAP) woken(gap)
  }
  let frozen: number | null = null
  const freeze = () => {
    frozen = Date.now()
  }
  const resume = () => {
    last = Date.now()
    if (frozen !== null) woken(last - frozen)
    frozen = null
  }
  const timer = setInterval(look, LOOK_EVERY)
  document.addEventListener("freeze", freeze)
  document.addEventListener("resume", resume)
  document.addEventListener("visibilitychange", look)
  return {
    alive() {
      last = Date.now()
    },
    stop() {
      clearInterval(timer)
      document.removeEventListener("freeze", freeze)
      document.removeEventListener("resume", resume)
      document.removeEventListener("visibilitychange", look)
    },
  }
}
