import { spawnSync } from "node:child_process"
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { dirname, join } from "node:path"
import { afterAll, describe, expect, it } from "vitest"
import { mayImport, sourceFiles, violations } from "./import-direction"

const root = join(import.meta.dirname, "../..")

const planted = mkdtempSync(join(tmpdir(), "planted-"))
afterAll(() => rmSync(planted, { recursive: true }))

/** Biome's complaints, by the project's own configuration, about a text standing at that path; empty for none. */
function biomeSays(path: string, text: string): string {
  mkdirSync(dirname(join(planted, path)), { recursive: true })
  copyFileSync(join(root, "biome.json"), join(planted, "biome.json"))
  writeFileSync(join(planted, path), text)
  const args = [join(root, "node_modules/@biomejs/biome/bin/biome"), "lint", "--vcs-enabled=false", path]
  const run = spawnSync(process.execPath, args, { cwd: planted, encoding: "utf8" })
  return run.status === 0 ? "" : run.stdout + run.stderr
}

describe("import directions", () => {
  it("hold in every source of the project", () => {
    const files = sourceFiles(root)
    expect(files.length).toBeGreaterThan(2)
    expect(files.flatMap((file) => violations(file, readFileSync(join(root, file), "utf8")))).toEqual([])
  })

  it("only ever lead down: no two folders may import each other", () => {
    for (const [folder, others] of Object.entries(mayImport)) {
      for (const other of others) expect(mayImport[other], `${folder} and ${other}`).not.toContain(folder)
    }
  })

  it.each([
    ["an import", 'import { x } from "../../scene/fields"'],
    ["a type import", 'import type { X } from "../../scene/fields"'],
    ["a bare import", 'import "../../scene/fields"'],
    ["a re-export", 'export { x } from "../../scene/fields"'],
    ["a re-export of everything", 'export * from "../../scene/fields"'],
    ["a lazy import", 'export const later = () => import("../../scene/fields")'],
    ["an inline type import", 'export type X = import("../../scene/fields").X'],
    ["an import by glob", 'export const all = import.meta.glob(["../../scene/*.ts"])'],
    ["an address relative to the module", 'export const at = new URL("../../scene/fields.ts", import.meta.url)'],
    ["an address from the root", 'import "/src/scene/fields.ts"'],
    ["a package", 'import { create } from "zustand"'],
    ["a module of Node", 'import { readFileSync } from "node:fs"'],
    ["another top-level folder", 'import text from "../../../assets/text.json"'],
  ])("refuse %s that leads out of core, and name its line", (_what, line) => {
    const found = violations("src/core/balance/planted.ts", `export const three = 3\n${line}\n`)
    expect(found).toHaveLength(1)
    expect(found[0]).toMatchObject({ file: "src/core/balance/planted.ts", line: 2 })
  })

  it.each([
    ["src/core/balance/planted.ts", "../solids/box"],
    ["src/scene/planted.ts", "zod"],
    ["src/report/planted.ts", "../describe/balance"],
    ["src/panels/table/planted.tsx", "../../commands/undo"],
    ["src/panels/planted.tsx", "react"],
    ["src/app/planted.tsx", "../view3d/stage"],
    ["src/app/planted.tsx", "../../assets/mark.svg?url"],
  ])("allow %s to import %s", (file, target) => {
    expect(violations(file, `import "${target}"`)).toEqual([])
  })

  it.each([
    ["src/scene/planted.ts", "../state/store"],
    ["src/describe/planted.ts", "../state/store"],
    ["src/describe/planted.ts", "react"],
    ["src/report/planted.ts", "three/addons/math/Octree.js"],
    ["src/report/planted.ts", "@react-three/drei"],
    ["src/state/planted.ts", "../commands/undo"],
    ["src/commands/planted.ts", "../panels/table"],
    ["src/panels/planted.tsx", "../view3d/stage"],
    ["src/files/planted.ts", "../app/shell"],
    ["src/app/planted.tsx", "../../tests/tools/start"],
  ])("forbid %s to import %s", (file, target) => {
    expect(violations(file, `import "${target}"`)).toHaveLength(1)
  })

  it("refuse a source that lies in no folder of the table", () => {
    expect(violations("src/loose.ts", "export const five = 5")).toHaveLength(1)
    expect(violations("src/elsewhere/planted.ts", "export const five = 5")).toHaveLength(1)
  })
})

describe("core's lint", () => {
  it.each([
    ["the clock", "export const now = Date.now()"],
    ["chance", "export const chance = Math.random()"],
    ["the window", "export const wide = window.innerWidth"],
    ["the document", "export const title = document.title"],
    ["the console", 'console.log("seven")'],
    ["the timer", "export const now = performance.now()"],
    ["the global object", "export const all = globalThis"],
  ])("refuses %s", (_what, text) => {
    expect(biomeSays("src/core/balance/planted.ts", `${text}\n`)).toMatch(
      /noRestrictedGlobals|noConsole|noJsRestricted/,
    )
  })

  it("lets plain arithmetic pass", () => {
    expect(biomeSays("src/core/balance/planted.ts", "export const five = Math.hypot(3, 4)\n")).toBe("")
  })

  it("leaves the clock to the folders above core", () => {
    expect(biomeSays("src/state/planted.ts", "export const now = Date.now()\n")).toBe("")
  })
})

describe("every folder's lint", () => {
  it("refuses sources that import each other in a ring", () => {
    biomeSays("src/state/first.ts", 'import { five } from "./second"\nexport const three = five - 2\n')
    const said = biomeSays("src/state/second.ts", 'import { three } from "./first"\nexport const five = three + 2\n')
    expect(said).toContain("noImportCycles")
  })
})
