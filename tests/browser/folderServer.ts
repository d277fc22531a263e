import { readFileSync } from "node:fs"
import { createServer } from "node:http"
import { extname, join, normalize } from "node:path"

const types: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".webmanifest": "application/manifest+json",
}

export interface FolderServer {
  /** With a slash at its end. */
  readonly address: string
  /** Answers with this instead of the file of that name. */
  replace(file: string, text: string): void
  /** Names of the files that were asked for. */
  readonly asked: string[]
  stop(): Promise<void>
}

/** Serves a folder below `/club/bench/`, as a plain web server would, so that it can be changed and taken away. */
export async function serveFolder(folder: string): Promise<FolderServer> {
  const base = "/club/bench/"
  const replaced = new Map<string, string>()
  const asked: string[] = []
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? "/", "http://localhost").pathname
    const file = path === base ? "index.html" : normalize(path.slice(base.length))
    asked.push(file)
    try {
      if (!path.startsWith(base) || file.startsWith("..")) throw new Error("not here")
      const content = replaced.get(file) ?? readFileSync(join(folder, file))
      response.setHeader("Content-Type", types[extname(file)] ?? "text/plain")
      response.end(content)
    } catch {
      response.statusCode = 404
      response.end("not here")
    }
  })
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve))
  const at = server.address()
  if (at === null || typeof at === "string") throw new Error("the server has no port")
  return {
    address: `http://localhost:${at.port}${base}`,
    asked,
    replace: (file, text) => replaced.set(file, text),
    stop: () =>
      new Promise((resolve) => {
        server.closeAllConnections()
        server.close(() => resolve())
      }),
  }
}
