import { availableParallelism } from "node:os"
import { isMainThread } from "node:worker_threads"
import { printed } from "../printed"
import { readText } from "../readText"
import { runFind } from "./run"
import { serveThread, threads } from "./threads"

if (isMainThread) {
  const spawn = threads(new URL(import.meta.url))
  printed(await runFind(process.argv.slice(2), { processors: availableParallelism(), spawn, read: readText }))
} else serveThread()
