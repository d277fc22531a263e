/**
 * Starts a command of the command line. Bundled once into build/ and run from there, it answers in a fraction of the
 * time that compiling its sources takes at each start; the bundle is made again when any source has changed.
 */
import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { pathToFileURL } from "node:url"
import { sourceStamp } from "./source-stamp.mjs"

const root = join(import.meta.dirname, "../..")
const sources = ["src/core", "src/scene", "src/describe", "src/report", "package-lock.json", "tsconfig.json"]

function isCurrent(bundle, firstLine) {
  try {
    return readFileSync(bundle, "utf8").startsWith(firstLine)
  } catch {
    return false
  }
}

/** Runs the command `name` (of package.json's scripts too), whose sources begin at `entry`. */
export async function startBundled(name, entry) {
  const bundle = join(root, `build/${name}.mjs`)
  const firstLine = `// made from sources ${sourceStamp(root, sources)}\n`
  if (!isCurrent(bundle, firstLine)) {
    const { build } = await import("esbuild")
    const made = await build({
      absWorkingDir: root,
      entryPoints: [entry],
      bundle: true,
      write: false,
      platform: "node",
      target: "node20",
      format: "esm",
      logLevel: "error",
    }).catch(() => process.exit(1))
    // Written aside and renamed, so that a command started meanwhile never reads half a bundle.
    const aside = `${bundle}.${process.pid}`
    mkdirSync(join(root, "build"), { recursive: true })
    writeFileSync(aside, firstLine + made.outputFiles[0].text)
    renameSync(aside, bundle)
  }
  // npm starts its scripts in the project's folder; file names are meant from where the person stands.
  if (process.env.npm_lifecycle_event === name && process.env.INIT_CWD) process.chdir(process.env.INIT_CWD)
  process.argv[1] = bundle
  await import(pathToFileURL(bundle).href)
}
