import { existsSync, readFileSync } from "node:fs"
import { join, posix } from "node:path"
import { parseSync } from "vite"
import { expect, test } from "vitest"
import type { Node } from "../tools/import-direction"

const root = join(import.meta.dirname, "../..")

/** Whether an import or export brings in something at run time, not types alone. */
function isOfValues({ importKind, exportKind, specifiers }: Node): boolean {
  if (importKind === "type" || exportKind === "type") return false
  const named = (specifiers ?? []) as { importKind?: string; exportKind?: string }[]
  return named.length === 0 || named.some((each) => (each.importKind ?? each.exportKind) !== "type")
}

/** The sources that a source runs, itself among them, from the project's root. */
function reachedFrom(file: string, reached = new Set<string>()): ReadonlySet<string> {
  if (reached.has(file)) return reached
  reached.add(file)
  const { program } = parseSync(file, readFileSync(join(root, file), "utf8"))
  for (const node of program.body as unknown as Node[]) {
    const source = (node.source as { value: string } | null | undefined)?.value
    if (source === undefined || !source.startsWith(".") || !isOfValues(node)) continue
    const path = posix.join(posix.dirname(file), source)
    reachedFrom([`${path}.ts`, `${path}/index.ts`].find((each) => existsSync(join(root, each)))!, reached)
  }
  return reached
}

test("the worker that searches kits carries no words: it would speak English on any page", () => {
  const reached = [...reachedFrom("src/files/findWorker.ts")]
  expect(reached).toContain("src/scene/find/space.ts")
  expect(reached.filter((file) => file.startsWith("src/words/"))).toEqual([])
  // What the page puts the worker's refusals in words with does carry some, and so would show here.
  expect([...reachedFrom("src/scene/find/spaceErrors.ts")]).toContain("src/words/findFaults.ts")
})
