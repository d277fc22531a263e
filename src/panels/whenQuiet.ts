/** Long enough after the last change that a drag is over or rests, short enough to be there when the eye arrives, ms. */
const QUIET_MS = 180
/** The browser may wait this long for a free moment, ms. */
const PATIENCE_MS = 1000

/** Acts once it has been quiet for a moment and the browser is idle, unless it is cancelled: by whoever is no longer quiet. */
export function whenQuiet(act: () => void): () => void {
  let cancelIdle: (() => void) | undefined
  const timer = setTimeout(() => {
    cancelIdle = whenIdle(act)
  }, QUIET_MS)
  return () => {
    clearTimeout(timer)
    cancelIdle?.()
  }
}

/** Calls back in a free moment, or soon where the browser does not say when it is free. */
function whenIdle(act: () => void): () => void {
  if (typeof requestIdleCallback === "function") {
    const handle = requestIdleCallback(act, { timeout: PATIENCE_MS })
    return () => cancelIdleCallback(handle)
  }
  const handle = setTimeout(act, 0)
  return () => clearTimeout(handle)
}
