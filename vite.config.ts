import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import react from "@vitejs/plugin-react"
import { defineConfig, type Plugin } from "vite"
import type { FileText } from "./src/describe/fileText.ts"
import { notOffline, offline } from "./tests/tools/offline.ts"
import { slimShaders } from "./tests/tools/slim-shaders.ts"

const root = import.meta.dirname

/** What the built page may do: run and fetch only what it came with, so that nothing typed into it can leave it. */
const contentPolicy = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "connect-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "worker-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'self'",
  "form-action 'none'",
].join("; ")

/** Only in the build: the development server needs inline scripts for its reloading. */
function contentPolicyTag(): Plugin {
  return {
    name: "content-policy",
    apply: "build",
    transformIndexHtml: () => [
      {
        tag: "meta",
        attrs: { "http-equiv": "Content-Security-Policy", content: contentPolicy },
        injectTo: "head-prepend",
      },
    ],
  }
}

interface NamedFile {
  readonly file: string
  readonly text: string
  readonly name: FileText
  /** A lesson's sentence about itself. */
  readonly about?: FileText
}

const isText = (value: unknown): value is FileText =>
  typeof value === "string" || (typeof value === "object" && value !== null && "en" in value)

function namedFiles(folder: string): NamedFile[] {
  const files = readdirSync(join(root, folder), { withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".json"))
    .map((entry) => entry.name)
    .sort()
  return files.map((file) => {
    const text = readFileSync(join(root, folder, file), "utf8")
    try {
      const { name, about } = JSON.parse(text) as { name?: unknown; about?: unknown }
      if (!isText(name)) throw new Error("it has no name")
      return { file, text, name, ...(isText(about) && { about }) }
    } catch (problem) {
      throw new Error(`${folder}/${file} cannot be listed: ${problem instanceof Error ? problem.message : problem}`)
    }
  })
}

const indexOf = (folder: string) => `${JSON.stringify(namedFiles(folder).map(({ text: _, ...listed }) => listed))}\n`

/** What is put beside the page as it is: scenes, kits of pieces to build rigs from, and lessons. */
const folders = ["scenes", "scenes/kits", "scenes/lessons"]

/**
 * Puts the `*.json` of each folder beside the page, with an `index.json` listing `{ file, name }` of each, and what a
 * lesson is about, in order of file name. They are fetched one at a time when asked for; the built folder holds all of
 * them.
 */
function scenes(): Plugin {
  return {
    name: "scenes",
    configureServer(server) {
      for (const folder of folders) {
        server.middlewares.use(`/${folder}/index.json`, (_request, response, next) => {
          try {
            const list = indexOf(folder)
            response.setHeader("Content-Type", "application/json")
            response.end(list)
          } catch (problem) {
            next(problem)
          }
        })
      }
    },
    generateBundle() {
      for (const folder of folders) {
        for (const { file, text } of namedFiles(folder)) {
          this.emitFile({ type: "asset", fileName: `${folder}/${file}`, source: text })
        }
        this.emitFile({ type: "asset", fileName: `${folder}/index.json`, source: indexOf(folder) })
      }
    },
  }
}

interface StandIns {
  /** What the path of the package's module ends in. */
  readonly module: RegExp
  /** Each way the module makes something, and what it makes instead. */
  readonly made: Readonly<Record<string, string>>
  readonly code: string
  /** What else becomes of the module's source. */
  readonly reduced?: (source: string) => string
}

/**
 * Parts of three's renderer that come along whether used or not: headsets, light from environment maps, and what its
 * shaders hold for other materials.
 */
const withoutUnused: StandIns = {
  module: /\/three\/build\/three\.module\.js$/,
  reduced: slimShaders,
  made: {
    "new WebXRManager( _this, _gl )": "new NoHeadset()",
    "new PMREMGenerator( renderer )": "noEnvironmentMaps()",
  },
  code: `
class NoHeadset extends EventDispatcher {
  enabled = false
  isPresenting = false
  cameraAutoUpdate = false
  setAnimationLoop() {}
  getEnvironmentBlendMode() {}
  hasDepthSensing() { return false }
  dispose() {}
}
function noEnvironmentMaps() {
  throw new Error("the picture is built without environment maps: light it with lamps")
}
`,
}

/** fiber still times its frames with a class that three gives up and warns of on the console; this does the same. */
const withoutOldClock: StandIns = {
  module: /\/@react-three\/fiber\/dist\/events-\w+\.esm\.js$/,
  made: { "new THREE.Clock()": "new FrameClock()" },
  code: `
class FrameClock {
  autoStart = true
  running = false
  startTime = 0
  oldTime = 0
  elapsedTime = 0
  start() {
    this.startTime = this.oldTime = performance.now()
    this.elapsedTime = 0
    this.running = true
  }
  stop() {
    this.getDelta()
    this.running = this.autoStart = false
  }
  getDelta() {
    if (this.autoStart && !this.running) this.start()
    if (!this.running) return 0
    const delta = (performance.now() - this.oldTime) / 1000
    this.oldTime += delta * 1000
    this.elapsedTime += delta
    return delta
  }
  getElapsedTime() {
    this.getDelta()
    return this.elapsedTime
  }
}
`,
}

/**
 * Has packages make something else than they do, in what every visitor downloads. A package that makes it otherwise
 * fails the build instead of bringing it back unseen.
 */
function standingIn(...all: readonly StandIns[]): Plugin {
  return {
    name: "standing-in",
    apply: "build",
    transform(code, id) {
      const found = all.find(({ module }) => module.test(id))
      if (found === undefined) return
      let kept = code
      for (const [made, instead] of Object.entries(found.made)) {
        if (!kept.includes(made)) this.error(`${id} no longer has "${made}", which this build replaces`)
        kept = kept.replaceAll(made, instead)
      }
      return { code: (found.reduced?.(kept) ?? kept) + found.code, map: null }
    },
  }
}

interface ModuleLinks {
  readonly isEntry: boolean
  readonly importers: readonly string[]
}

/**
 * Whether a module is needed at once: reached from the page's entry by imports that are not lazy. All such modules go
 * in one file, since two dozen small ones compress worse by a twentieth.
 */
function neededAtOnce(id: string, linksOf: (id: string) => ModuleLinks | null, seen = new Set<string>()): boolean {
  if (seen.has(id)) return false
  seen.add(id)
  const links = linksOf(id)
  if (links === null) return false
  return links.isEntry || links.importers.some((importer) => neededAtOnce(importer, linksOf, seen))
}

export default defineConfig({
  root,
  // Relative addresses, so that the built folder works from any place on a server.
  base: "./",
  // One page: an address that is not a file is "not found", never the page again under another name.
  appType: "mpa",
  publicDir: false,
  plugins: [react(), scenes(), contentPolicyTag(), standingIn(withoutUnused, withoutOldClock), offline(), notOffline()],
  build: {
    target: "es2022",
    // BENCH_DIST keeps two builds of one working tree apart.
    outDir: process.env.BENCH_DIST ?? "dist",
    emptyOutDir: true,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [{ name: (id, modules) => (neededAtOnce(id, (one) => modules.getModuleInfo(one)) ? "shell" : null) }],
        },
      },
    },
  },
  server: { host: "127.0.0.1", port: 5173 },
  preview: { host: "127.0.0.1", port: 5173 },
})
