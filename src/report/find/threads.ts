import { parentPort, Worker } from "node:worker_threads"
import { type Order, type Report, serveFind } from "../../scene/find"
import type { Spawn } from "../../scene/find/pool/pool"

/** Workers as threads that run the script at `file`, which calls `serveThread`. */
export const threads =
  (file: URL): Spawn =>
  (onReport, onDeath) => {
    const worker = new Worker(file)
    worker.on("message", (report: Report) => onReport(report))
    worker.on("error", (problem) => onDeath(problem.message))
    worker.on("exit", (code) => onDeath(`a worker ended with ${code}`))
    return {
      post: (order) => worker.postMessage(order),
      end: () => void worker.terminate(),
    }
  }

/** The inside of such a thread. */
export function serveThread(): void {
  const port = parentPort
  if (port === null) throw new Error("this is no worker thread")
  const serve = serveFind(
    (report) => port.postMessage(report),
    () => new Promise((resolve) => setImmediate(resolve)),
  )
  port.on("message", (order: Order) => serve(order))
}
