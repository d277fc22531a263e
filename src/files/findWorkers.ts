import type { Spawn } from "../scene/find/pool/pool"
import { kitFiles as words } from "../words/kitFiles"

/** A search shares out among at most so many: more make a phone hot, and hardly a search shorter. */
const MOST_WORKERS = 4
/** How often a worker is listened for, ms. At work it speaks several times a second, so a second is long. */
export const LISTEN_EVERY = 1_000
/** After how many silent times in a row it counts as dead. */
export const SILENT_TIMES = 5
/** The same before its first word: it may have to be fetched. */
export const SILENT_AT_FIRST = 15
/** Listenings further apart than this, ms, are those of a page that slept: a worker may have slept with it. */
const ASLEEP = 3_000

/** As many workers as there are processors to spare. */
export const workersHere = (): number => Math.max(1, Math.min(MOST_WORKERS, navigator.hardwareConcurrency || 2))

/** What of a browser's worker is used. */
export type PageWorker = Pick<Worker, "postMessage" | "terminate" | "onmessage" | "onerror" | "onmessageerror">

/**
 * Starts workers made by `make`. Besides what breaks in one, a worker that should be at work and says nothing for some
 * seconds of the page's own time counts as dead: the browser does not tell when it has taken one away. One that cannot
 * even be made is a death too.
 */
export const spawning =
  (make: () => PageWorker): Spawn =>
  (onReport, onDeath) => {
    let worker: PageWorker | null = null
    let over = false
    let spoken = false
    let silent = 0
    let waits = false
    let last = Date.now()
    const listening = setInterval(() => {
      const now = Date.now()
      if (now - last > ASLEEP) silent = 0
      last = now
      if (!waits) return
      silent++
      if (silent > (spoken ? SILENT_TIMES : SILENT_AT_FIRST)) die(words.silent)
    }, LISTEN_EVERY)
    const end = () => {
      over = true
      clearInterval(listening)
      worker?.terminate()
    }
    const die = (reason: string) => {
      if (over) return
      end()
      onDeath(reason)
    }
    // Told of only when its maker has it in hand.
    const dieSoon = (problem: unknown) =>
      queueMicrotask(() => die(problem instanceof Error ? problem.message : String(problem)))
    try {
      worker = make()
      worker.onmessage = ({ data }) => {
        if (over) return
        spoken = true
        silent = 0
        if (data.kind !== "alive") waits = data.kind === "progress"
        onReport(data)
      }
      worker.onerror = (event) => {
        event.preventDefault()
        die(event.message || words.searchAway)
      }
      worker.onmessageerror = () => die(words.lost)
    } catch (problem) {
      dieSoon(problem)
    }
    return {
      post(order) {
        if (over) return
        silent = 0
        waits ||= order.kind !== "demand"
        try {
          worker?.postMessage(order)
        } catch (problem) {
          dieSoon(problem)
        }
      },
      end,
    }
  }

/** Starts a worker of the page. */
export const spawnWorker: Spawn = spawning(
  () => new Worker(new URL("./findWorker.ts", import.meta.url), { type: "module", name: "find" }),
)
