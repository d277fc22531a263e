import type { Spawn } from "../scene/find/pool/pool"

/** A search shares out among at most so many: more make a phone hot, and hardly a search shorter. */
const MOST_WORKERS = 4
/** How often a worker is listened for, ms, and after how many silent times in a row it counts as dead. */
const LISTEN_EVERY = 5_000
const SILENT_TIMES = 12

/** As many workers as there are processors to spare. */
export const workersHere = (): number => Math.max(1, Math.min(MOST_WORKERS, navigator.hardwareConcurrency || 2))

/**
 * Starts a worker of the page. Besides what breaks in it, a worker that says nothing for a minute of the page's own
 * time counts as dead: the browser does not tell when it has taken one away. A tab that was asleep has not listened
 * meanwhile, and gives it a minute more.
 */
export const spawnWorker: Spawn = (onReport, onDeath) => {
  const worker = new Worker(new URL("./findWorker.ts", import.meta.url), { type: "module", name: "find" })
  let silent = 0
  let waits = false
  const listening = setInterval(() => {
    if (!waits) return
    silent++
    if (silent > SILENT_TIMES) die("a worker fell silent")
  }, LISTEN_EVERY)
  const end = () => {
    clearInterval(listening)
    worker.terminate()
  }
  const die = (reason: string) => {
    end()
    onDeath(reason)
  }
  worker.onmessage = ({ data }) => {
    silent = 0
    waits = data.kind === "progress"
    onReport(data)
  }
  worker.onerror = (event) => {
    event.preventDefault()
    die(event.message || "the part of the page that searches could not be fetched or broke")
  }
  worker.onmessageerror = () => die("a message was lost")
  return {
    post(order) {
      silent = 0
      waits ||= order.kind !== "demand"
      worker.postMessage(order)
    },
    end,
  }
}
