/**
 * Starts the command-line report. Bundled once into build/ and run from there, it answers in a fraction of the time
 * that compiling its sources takes at each start; the bundle is made again when any source has changed.
 */
import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { pathToFileURL } from "node:url"
import { sourceStamp } from "./source-stamp.mjs"

const root = join(import.meta.dirname, "../..")
const bundle = join(root, "build/report.mjs")
const sources = ["src/core", "src/scene", "src/describe", "src/report", "package-lock.json", "tsconfig.json"]
const firstLine = `// made from sources ${sourceStamp(root, sources)}\n`

function isCurrent() {
  try {
    return readFileSync(bundle, "utf8").startsWith(firstLine)
  } catch {
    return false
  }
}

if (!isCurrent()) {
  const { build } = await import("esbuild")
  const made = await build({
    absWorkingDir: root,
    entryPoints: ["src/report/main.ts"],
    bundle: true,
    write: false,
    platform: "node",
    target: "node20",
    format: "esm",
    logLevel: "error",
  }).catch(() => process.exit(1))
  // Written aside and renamed, so that a report started meanwhile never reads half a bundle.
  const aside = `${bundle}.${process.pid}`
  mkdirSync(join(root, "build"), { recursive: true })
  writeFileSync(aside, firstLine + made.outputFiles[0].text)
  renameSync(aside, bundle)
}

// npm starts its scripts in the project's folder; file names are meant from where the person stands.
if (process.env.npm_lifecycle_event === "report" && process.env.INIT_CWD) process.chdir(process.env.INIT_CWD)
process.argv[1] = bundle
await import(pathToFileURL(bundle).href)
