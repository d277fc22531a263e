import { readFileSync, writeFileSync } from "node:fs"
import { join, resolve } from "node:path"
import { pathToFileURL } from "node:url"
import { build } from "vite"
import { sourceStamp } from "../../src/report/source-stamp.mjs"

const root = join(import.meta.dirname, "../..")
const sources = [
  "src",
  "assets",
  "scenes",
  "index.html",
  "vite.config.ts",
  "tests/tools/offline.ts",
  "tsconfig.json",
  "package-lock.json",
]
const stampFile = () => join(resolve(root, process.env.BENCH_DIST ?? "dist"), "built-from.txt")

/** Builds the page into dist/ (or BENCH_DIST) and leaves there what it was built from. */
export async function buildPage(): Promise<void> {
  // Taken before building: a file changed meanwhile makes the build stale, as it should.
  const stamp = sourceStamp(root, sources)
  await build({ root, configFile: join(root, "vite.config.ts") })
  writeFileSync(stampFile(), `${stamp}\n`)
}

/** Builds the page unless the last build was made from these very sources. */
export async function buildPageIfStale(): Promise<void> {
  let built = ""
  try {
    built = readFileSync(stampFile(), "utf8").trim()
  } catch {
    // Never built: any stamp differs from none.
  }
  if (built !== sourceStamp(root, sources)) await buildPage()
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  await buildPage().catch((problem: unknown) => {
    console.error(problem instanceof Error ? problem.message : problem)
    process.exit(1)
  })
}
