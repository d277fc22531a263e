/** The inside of a worker that searches kits. */
import type { Order, Report } from "../scene/find"
// By its own path: what else is in the index has words in it, and a worker speaks no language.
import { serveFind } from "../scene/find/pool/serve"

interface WorkerScope {
  postMessage(report: Report): void
  onmessage: ((event: { data: Order }) => void) | null
}
const scope = self as unknown as WorkerScope

/** A message to oneself comes after the orders that wait, and without the pause that timers are given. */
const { port1, port2 } = new MessageChannel()
const waiting: (() => void)[] = []
port1.onmessage = () => waiting.shift()?.()
const pause = () =>
  new Promise<void>((resolve) => {
    waiting.push(resolve)
    port2.postMessage(null)
  })

const serve = serveFind((report) => scope.postMessage(report), pause)
// Fetched and running; from now on silence means that something is wrong.
scope.postMessage({ kind: "alive" })
scope.onmessage = ({ data }) => serve(data)
