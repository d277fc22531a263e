/**
 * The direction of imports between the folders of src, types included. A folder may use itself and what its row
 * names; anything else is an error. Run by itself it checks every source and lists what it finds.
 */
import { readdirSync, readFileSync } from "node:fs"
import { join, posix } from "node:path"
import { pathToFileURL } from "node:url"
import { parseSync } from "vite"

const view = ["core", "words", "scene", "describe", "state", "commands", "picture"]

/** Rows: a folder of src. Entries: the other folders of src it may import from. */
export const mayImport: Readonly<Record<string, readonly string[]>> = {
  core: [],
  words: [],
  scene: ["core", "words"],
  describe: ["core", "words", "scene"],
  state: ["core", "words", "scene"],
  commands: ["core", "words", "scene", "describe", "state"],
  picture: ["core", "words", "scene", "describe", "state", "commands"],
  view3d: view,
  viewflat: view,
  handles: view,
  panels: view,
  clinic: [...view, "panels"],
  files: view,
  takeaway: [...view, "view3d", "viewflat", "panels", "files"],
  report: ["core", "words", "scene", "describe"],
  app: [...view, "view3d", "viewflat", "handles", "panels", "clinic", "files", "takeaway", "report"],
}

/** Folders outside src that only pictures and pages draw on. */
const beside = ["assets", "scenes"]
const besideUsers = ["view3d", "viewflat", "handles", "panels", "clinic", "files", "takeaway", "app"]

/** Core is computation alone and takes no package at all; these also run in Node and must not need a page. */
const withoutPage = ["words", "scene", "describe", "report"]
const pagePackages = /^(react|react-dom|three|zustand|leva|@react-three\/[^/]+|@use-gesture\/[^/]+)(\/|$)/

export interface Violation {
  readonly file: string
  readonly line: number
  readonly imported: string
  readonly reason: string
}

export interface Node {
  readonly type: string
  readonly start: number
  readonly [key: string]: unknown
}

export const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && typeof (value as Node).type === "string"

const isImportMeta = (value: unknown, member: string): boolean =>
  isNode(value) &&
  value.type === "MemberExpression" &&
  isNode(value.object) &&
  value.object.type === "MetaProperty" &&
  isNode(value.property) &&
  value.property.name === member

function literals(value: unknown): string[] {
  if (!isNode(value)) return []
  if (value.type === "ArrayExpression") return (value.elements as unknown[]).flatMap(literals)
  if (value.type === "TSLiteralType") return literals(value.literal)
  return typeof value.value === "string" ? [value.value] : []
}

/** What one syntax node brings in from elsewhere, whichever way it is written. */
function importedBy(node: Node): string[] {
  const args = node.arguments as unknown[] | undefined
  switch (node.type) {
    case "ImportDeclaration":
    case "ExportAllDeclaration":
    case "ExportNamedDeclaration":
    case "ImportExpression":
    case "TSImportType":
      return literals(node.source)
    case "TSExternalModuleReference":
      return literals(node.expression)
    case "CallExpression":
      return isImportMeta(node.callee, "glob") ? literals(args?.[0]) : []
    case "NewExpression":
      return isImportMeta(args?.[1], "url") ? literals(args?.[0]) : []
    default:
      return []
  }
}

/** Visits the nodes right below a node. */
export function everyChild(node: Node, visit: (child: Node) => void): void {
  const look = (value: unknown): void => {
    if (Array.isArray(value)) for (const item of value) look(item)
    else if (isNode(value)) visit(value)
  }
  for (const value of Object.values(node)) look(value)
}

function everyNode(node: Node, visit: (node: Node) => void): void {
  visit(node)
  everyChild(node, (child) => everyNode(child, visit))
}

/** Why a file in `folder` may not import `target`, or undefined where it may. */
function objection(file: string, folder: string, target: string): string | undefined {
  if (/^[./]/.test(target)) {
    const path = target.startsWith("/") ? target.slice(1) : posix.join(posix.dirname(file), target)
    const [top = "", inner = ""] = path.split("/")
    if (top === "src") {
      if (inner === folder || mayImport[folder]?.includes(inner)) return undefined
      return `src/${folder} may not import from src/${inner}`
    }
    if (beside.includes(top) && besideUsers.includes(folder)) return undefined
    return `src/${folder} may not import from ${top}/`
  }
  if (folder === "core") return "src/core may not import any package"
  if (withoutPage.includes(folder) && pagePackages.test(target)) {
    return `src/${folder} runs without a page and may not import ${target}`
  }
  return undefined
}

/**
 * Imports of one source that go against the table.
 *
 * @param file path from the project's root, with forward slashes: `src/core/balance/total.ts`
 * @param text its source
 * @throws Error naming the file when it cannot be parsed
 */
export function violations(file: string, text: string): Violation[] {
  const folder = file.split("/")[1] ?? ""
  if (!(folder in mayImport) || file.split("/").length < 3) {
    return [{ file, line: 1, imported: "", reason: "not in a folder that the table of import directions names" }]
  }
  const { program, errors } = parseSync(file, text)
  if (errors.length > 0) throw new Error(`${file} cannot be parsed: ${errors[0]?.message}`)
  const found: Violation[] = []
  everyNode(program as unknown as Node, (node) => {
    for (const imported of importedBy(node)) {
      const reason = objection(file, folder, imported.replace(/\?.*$/, ""))
      if (reason) found.push({ file, line: text.slice(0, node.start).split("\n").length, imported, reason })
    }
  })
  return found
}

/** Paths of all sources under src, from the project's root. */
export function sourceFiles(root: string): string[] {
  return readdirSync(join(root, "src"), { recursive: true, encoding: "utf8" })
    .map((name) => posix.join("src", name.replaceAll("\\", "/")))
    .filter((name) => /\.[cm]?[jt]sx?$/.test(name))
    .sort()
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const root = join(import.meta.dirname, "../..")
  const files = sourceFiles(root)
  const found = files.flatMap((file) => violations(file, readFileSync(join(root, file), "utf8")))
  for (const { file, line, imported, reason } of found) console.error(`${file}:${line} "${imported}": ${reason}`)
  console.log(`Import directions: ${files.length} files, ${found.length} against the table.`)
  process.exitCode = found.length > 0 ? 1 : 0
}
