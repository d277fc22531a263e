/** Where a motion that is watched stands, without any rendering: pictures listen and move by themselves. */
export interface Clock {
  /** s from its start. */
  now(): number
  /** Goes to a time; before the start it is the start, past the end the end. */
  seek(time: number): void
  /** Sets how long the motion is, s; the time stays within. */
  setEnd(end: number): void
  end(): number
  /** Calls back at every change, and at once. */
  watch(listener: (time: number) => void): () => void
}

export function createClock(): Clock {
  let time = 0
  let last = 0
  const listeners = new Set<(time: number) => void>()
  const seek = (to: number) => {
    time = Math.min(last, Math.max(0, to))
    for (const listener of listeners) listener(time)
  }
  return {
    now: () => time,
    seek,
    setEnd(end) {
      last = end
      seek(time)
    },
    end: () => last,
    watch(listener) {
      listeners.add(listener)
      listener(time)
      return () => {
        listeners.delete(listener)
      }
    },
  }
}
