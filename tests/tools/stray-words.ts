/**
 * Words that the page might say and that stand outside the catalogue in src/words. Run by itself it checks every source,
 * or those under the paths given, and lists what it finds. It knows words by their looks: a text between tags, a
 * sentence, a capitalised word, a word beside a gap of a template; not a lone lower-case word, which is most often a key.
 */
import { readFileSync } from "node:fs"
import { join } from "node:path"
import { pathToFileURL } from "node:url"
import { parseSync } from "vite"
import { everyChild, type Node, sourceFiles } from "./import-direction"

/** Where words are at home: the catalogue, and what only the command line says. */
const HOMES = [/^src\/words\//, /^src\/report\//, /^src\/describe\/report[A-Z]\w*\.ts$/]

/** What looks like words and is none, by file or folder (every file where empty). One line each, with its reason. */
const ALLOWED: readonly (readonly [file: string, text: RegExp])[] = [
  // The sheets' own names, which their ids are made of.
  ["src/app/Sheet.tsx", /^(Balance|Rig|Bow|Sliders|Draw|Hills|Find|Measure|Nudge)$/],
  // A message between the page and its service worker; what a browser calls files that are dragged.
  ["src/app/offline/", /^take over$/],
  ["src/files/dropZone.ts", /^Files$/],
  // Units and transforms of styles, a question about pointers, the ids of knobs.
  ["src/handles/", /^px$|^px[,)]|^deg$|^\(pointer: coarse\)$|^extender $/],
  // The page's own name.
  ["", /^Bow Balance Bench$/],
  // Which elements have a use for arrow keys.
  ["src/clinic/lessons/useStepKeys.ts", /^input, /],
  // The words that links are packed with: what a file says, for ever.
  ["src/takeaway/link/words1.ts", /./],
  // Sizes of type and paper, and what of the page a picture is made of.
  ["src/takeaway/card/", /^pt$|^@page |^ portrait; /],
  ["src/takeaway/files/png.ts", /^\.flat-view svg$|^px $|^data:image/],
  // The state of a gesture, names within leva, its letters, and the paths of slots.
  ["src/panels/sliders/", /^given up$|^slider$|^system-ui, /],
  ["src/panels/bow/TargetFields.tsx", /^target:$/],
  // Keys as KeyboardEvent names them.
  ["", /^(Arrow(Up|Down|Left|Right)|Page(Up|Down)|Home|End|Escape|Enter|Shift|Control|Tab|Backspace|Delete|Meta|Alt)$/],
  // Drawn paths, transforms and view boxes.
  ["", /^\s*[MmLlHhVvAaZzCcQq][MmLlHhVvAaZzCcQq\s\d.-]*$/],
  // Programs for the graphics card, and what a browser is asked about its reader's wishes.
  ["", /\bvoid main\(\) \{/],
  ["", /^\(prefers-[a-z-]+: [a-z-]+\)$/],
  // Names of classes, and a transform's units.
  ["src/view3d/labels.ts", /^view3d-label view3d-$|^px[,)]/],
  // Paths of a scene, of slots and of figures.
  ["src/scene/", /^(target|centreMm)\.$|^bow\/limbs:$|^ at $/],
  // The size of a canvas's letters.
  ["src/panels/plot/inkwell.ts", /^px $/],
  ["src/app/hangBelow.ts", /^px$/],
]

/** Attributes of elements that are shown or read aloud; the others are for the browser. */
const SAID_ATTRIBUTES =
  /^(aria-(label|description|roledescription|valuetext|placeholder)|title|placeholder|alt|label|content)$/

const SENTENCE = /\p{L}[\p{L}’']*[,;:]? +\p{L}/u
const CAPITALISED = /^\p{Lu}\p{Ll}+([ …:.!?]|$)/u
const ENDED = /\p{Ll}{2,}[…:.!?]\s*$/u
const BESIDE_A_GAP = /(^|[\s(“])\p{L}{2,}([\s,.;:…”)]|$)/u

export interface StrayWords {
  readonly file: string
  readonly line: number
  readonly text: string
}

const looksSaid = (text: string) => SENTENCE.test(text) || CAPITALISED.test(text) || ENDED.test(text)

/** The texts of one node that look like words, where the node is one that may be said. */
function saidBy(node: Node): string[] {
  switch (node.type) {
    case "JSXText":
      return /\p{L}{2}/u.test(String(node.value)) ? [String(node.value)] : []
    case "Literal":
      return typeof node.value === "string" && looksSaid(node.value) ? [node.value] : []
    case "TemplateLiteral": {
      const pieces = (node.quasis as Node[]).map((piece) => String((piece.value as { cooked?: string }).cooked ?? ""))
      const alone = pieces.length === 1
      return pieces.filter((piece) => looksSaid(piece) || (!alone && BESIDE_A_GAP.test(piece)))
    }
    default:
      return []
  }
}

/** Nodes whose insides nobody is shown: types, imports, faults of the program, what a browser reads. */
function unsaid(node: Node): boolean {
  if (node.type === "JSXAttribute") {
    const { name } = node.name as { name: unknown }
    const element = typeof name === "string" ? name : ""
    if (node.ofElement === true) return !SAID_ATTRIBUTES.test(element)
    return element === "className"
  }
  if (node.type === "NewExpression") return /Error$/.test(String((node.callee as { name?: string }).name))
  return (
    (node.type.startsWith("TS") &&
      !["TSAsExpression", "TSSatisfiesExpression", "TSNonNullExpression"].includes(node.type)) ||
    node.type.startsWith("Import") ||
    node.type === "ExportAllDeclaration"
  )
}

/**
 * What of one source looks like words outside the catalogue.
 *
 * @param file path from the project's root, with forward slashes
 * @param text its source
 * @throws Error naming the file when it cannot be parsed
 */
export function strayWords(file: string, text: string): StrayWords[] {
  if (HOMES.some((home) => home.test(file))) return []
  const { program, errors } = parseSync(file, text)
  if (errors.length > 0) throw new Error(`${file} cannot be parsed: ${errors[0]?.message}`)
  const found: StrayWords[] = []
  const visit = (node: Node) => {
    if (unsaid(node)) return
    for (const said of saidBy(node)) {
      if (ALLOWED.some(([where, allowed]) => file.startsWith(where) && allowed.test(said))) continue
      found.push({ file, line: text.slice(0, node.start).split("\n").length, text: said.trim() })
    }
    if (node.type === "JSXOpeningElement") {
      const { name } = node.name as { name?: string }
      const ofElement = typeof name === "string" && /^[a-z]/.test(name)
      for (const each of node.attributes as Node[]) visit({ ...each, ofElement })
      return
    }
    everyChild(node, visit)
  }
  visit(program as unknown as Node)
  return found
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const root = join(import.meta.dirname, "../..")
  const under = process.argv.slice(2)
  const files = sourceFiles(root).filter((file) => under.length === 0 || under.some((path) => file.startsWith(path)))
  const found = files.flatMap((file) => strayWords(file, readFileSync(join(root, file), "utf8")))
  for (const { file, line, text } of found) console.error(`${file}:${line} ${JSON.stringify(text)}`)
  console.log(`Words outside the catalogue: ${files.length} files, ${found.length} found.`)
  process.exitCode = found.length > 0 ? 1 : 0
}
