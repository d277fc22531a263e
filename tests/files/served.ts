import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { vi } from "vitest"

const folder = join(import.meta.dirname, "../../scenes")

/** Answers `fetch` with the shipped scenes and their list, as the served page does, until globals are unstubbed. */
export function serveScenes(): void {
  const files = readdirSync(folder).filter((name) => name.endsWith(".json"))
  const list = files.map((file) => ({ file, name: JSON.parse(readFileSync(join(folder, file), "utf8")).name }))
  vi.stubGlobal("fetch", (address: string) => {
    const file = address.replace(/^scenes\//, "")
    if (file === "index.json") return Promise.resolve(new Response(JSON.stringify(list)))
    if (!files.includes(file)) return Promise.resolve(new Response("", { status: 404 }))
    return Promise.resolve(new Response(readFileSync(join(folder, file), "utf8")))
  })
}
