/** How soon after npm's end this is noticed. */
const lookEveryMs = 500

/**
 * Calls `stop` once when the npm that started this program has been ended. npm passes a signal on to its shell alone,
 * and not every shell passes it further: without this a stopped `npm start` would keep its port. Started by anything
 * but npm, a program may outlive its parent and nothing is watched.
 */
export function endWithNpm(stop: () => void): void {
  if (!process.env.npm_lifecycle_event) return
  const parent = process.ppid
  const timer = setInterval(() => {
    if (process.ppid === parent) return
    clearInterval(timer)
    stop()
  }, lookEveryMs)
  timer.unref()
}
