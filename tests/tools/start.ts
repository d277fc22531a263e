/**
 * Serves the built bench, building it first if its sources have changed.
 *
 *   npm start                      http://localhost:5173, or the next free port, said on the screen
 *   npm start -- --port 5200       another port
 *   npm start -- --strict-port     fail rather than take the next one
 *   npm start -- --host            also to phones and tablets on the same network
 */
import { join } from "node:path"
import { parseArgs } from "node:util"
import { preview } from "vite"
import { buildPageIfStale } from "./build"
import { endWithNpm } from "./end-with-npm"

const root = join(import.meta.dirname, "../..")

async function start(): Promise<void> {
  const { values } = parseArgs({
    options: {
      port: { type: "string", default: "5173" },
      "strict-port": { type: "boolean", default: false },
      host: { type: "boolean", default: false },
    },
  })
  const port = Number(values.port)
  if (!Number.isInteger(port) || port < 1 || port > 65535) {
    throw new Error(`--port takes a whole number from 1 to 65535, not "${values.port}"`)
  }
  await buildPageIfStale()
  const server = await preview({
    root,
    configFile: join(root, "vite.config.ts"),
    preview: { port, strictPort: values["strict-port"], host: values.host ? true : "127.0.0.1" },
  })
  endWithNpm(() => process.exit(0))
  const address = server.httpServer.address()
  const served = address && typeof address === "object" ? address.port : port
  console.log(`The bench is at http://localhost:${served}`)
  for (const other of server.resolvedUrls?.network ?? []) console.log(`and, on this network, at ${other}`)
  console.log("Ctrl+C stops it.")
}

await start().catch((problem: unknown) => {
  console.error(problem instanceof Error ? problem.message : problem)
  process.exit(1)
})
