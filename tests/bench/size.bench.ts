import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { gzipSync } from "node:zlib"
import react from "@vitejs/plugin-react"
import { build, type Rolldown } from "vite"
import type { Ratio } from "../tools/bench"

const root = join(import.meta.dirname, "../..")
const KIB = 1024
/** What the numbers and the flat drawing may weigh, gzip. */
const SHELL_BUDGET = 110 * KIB

type Chunk = Rolldown.OutputChunk

/** The first view's JavaScript, gzip, against its budget and against a page with nothing but an empty fiber Canvas. */
export async function run(): Promise<Ratio[]> {
  const chunks = await built(root, join(root, "vite.config.ts"))
  const holding = (file: string) => chunks.find((chunk) => chunk.moduleIds.some((id) => id.endsWith(file)))
  const entry = holding("src/app/main.tsx")
  const view = holding("src/view3d/View3d.tsx")
  if (entry === undefined || view === undefined) throw new Error("the build has no entry or no 3D view of its own")
  const shell = weight(withImports(chunks, [entry]))
  const firstView = weight(withImports(chunks, [entry, view]))
  const canvas = weight(await emptyCanvas())
  return [
    row("shell: numbers and flat drawing", shell, "its budget", SHELL_BUDGET),
    row("first view: shell and 3D view", firstView, "an empty fiber <Canvas> page", canvas),
  ]
}

const row = (what: string, mine: number, against: string, other: number): Ratio => ({
  what,
  ratio: mine / other,
  against,
  detail: `${(mine / KIB).toFixed(1)} KiB to ${(other / KIB).toFixed(1)} KiB, gzip`,
})

const weight = (chunks: readonly Chunk[]) => chunks.reduce((sum, chunk) => sum + gzipSync(chunk.code).length, 0)

/** The chunks and all that they import at once, each counted once. */
function withImports(all: readonly Chunk[], from: readonly Chunk[]): Chunk[] {
  const found = new Set<Chunk>()
  const visit = (chunk: Chunk) => {
    if (found.has(chunk)) return
    found.add(chunk)
    for (const name of chunk.imports) {
      const next = all.find((candidate) => candidate.fileName === name)
      if (next !== undefined) visit(next)
    }
  }
  from.forEach(visit)
  return [...found]
}

async function built(folder: string, configFile: string | false, plugins = configFile === false ? [react()] : []) {
  const result = await build({
    root: folder,
    configFile,
    plugins,
    logLevel: "silent",
    build: { write: false, target: "es2022" },
  })
  const outputs = (Array.isArray(result) ? result : [result]) as Rolldown.RolldownOutput[]
  return outputs.flatMap(({ output }) => output).filter((file): file is Chunk => file.type === "chunk")
}

async function emptyCanvas(): Promise<Chunk[]> {
  const folder = mkdtempSync(join(tmpdir(), "empty-canvas-"))
  try {
    symlinkSync(join(root, "node_modules"), join(folder, "node_modules"))
    writeFileSync(join(folder, "index.html"), '<div id="root"></div><script type="module" src="/main.jsx"></script>')
    writeFileSync(
      join(folder, "main.jsx"),
      'import { createRoot } from "react-dom/client"\nimport { Canvas } from "@react-three/fiber"\n' +
        'createRoot(document.getElementById("root")).render(<Canvas />)\n',
    )
    return await built(folder, false)
  } finally {
    rmSync(folder, { recursive: true })
  }
}
