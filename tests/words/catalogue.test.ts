import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { parseSync } from "vite"
import { describe, expect, test } from "vitest"
import * as english from "../../src/words/all"
import { french } from "../../src/words/fr"

const folder = join(import.meta.dirname, "../../src/words")
/** What chooses the language and writes numbers says nothing itself. */
const machinery = ["all.ts", "language.ts", "numbers.ts"]
const partFiles = readdirSync(folder)
  .filter((name) => name.endsWith(".ts") && !machinery.includes(name))
  .map((name) => name.replace(/\.ts$/, ""))
  .sort()

type Entry = string | ((...gaps: unknown[]) => unknown)

/** Every sentence by its place: `bar.save`. */
function entries(part: unknown, place: string): [string, Entry][] {
  if (typeof part === "string" || typeof part === "function") return [[place, part as Entry]]
  if (part === null || typeof part !== "object")
    throw new Error(`${place} is ${String(part)}: neither words nor a group`)
  return Object.entries(part).flatMap(([key, inner]) => entries(inner, `${place}.${key}`))
}
const inEnglish = new Map(entries(english, ""))
const inFrench = new Map(entries(french, ""))
const places = [...inEnglish.keys()]

/** Words that are the same in both languages: units, signs, names, and what French took over or gave. */
const THE_SAME = new Set<string>([
  "Masses",
  "Forces",
  "newtons",
  "Notes",
  "V-bar",
  "Archer",
  "V-bars",
  "grip",
  "Scores",
  "scores",
])

/** What is said with each gap filled by a mark of its own; numbers first, for gaps that decide between one and many. */
function filled(entry: Entry, length: number): { said: string; marks: string[] } {
  if (typeof entry === "string") return { said: entry, marks: [] }
  const numbers = Array.from({ length }, (_, index) => 7001 + 1010 * index)
  const texts = numbers.map((number) => `§${number}§`)
  for (const gaps of [texts, numbers]) {
    try {
      return { said: flat(entry(...gaps)), marks: gaps.map(String) }
    } catch {
      // A gap that takes a number is given one the next time.
    }
  }
  throw new Error("a sentence takes neither texts nor numbers in its gaps")
}

/** A sentence, or one in parts. */
function flat(said: unknown): string {
  if (typeof said === "string" || typeof said === "number") return String(said)
  if (Array.isArray(said)) return said.map(flat).join("")
  throw new Error(`says ${JSON.stringify(said)}`)
}

test("every part of the catalogue is listed, in both languages, under the name it asks for", () => {
  expect(Object.keys(english).sort()).toEqual(partFiles)
  expect(Object.keys(french).sort()).toEqual(partFiles)
  for (const name of partFiles) {
    expect(readFileSync(join(folder, `${name}.ts`), "utf8"), name).toContain(
      `export const ${name} = spoken("${name}", {`,
    )
  }
})

test("no word is missing in French, and none is there that English has not", () => {
  expect([...inFrench.keys()].sort()).toEqual([...places].sort())
})

test("every sentence says something", () => {
  for (const all of [inEnglish, inFrench]) {
    expect([...all].filter(([, entry]) => typeof entry === "string" && entry.trim() === "").map(([at]) => at)).toEqual(
      [],
    )
  }
})

test("a sentence has the same gaps in both languages, and French says each that English says", () => {
  const wrong = places.flatMap((place) => {
    const [one, other] = [inEnglish.get(place)!, inFrench.get(place)!]
    if (typeof one !== typeof other) return [`${place} is a sentence with gaps in one language only`]
    if (typeof one === "string" || typeof other === "string") return []
    const length = Math.max(one.length, other.length)
    const [said, dit] = [filled(one, length), filled(other, length)]
    const lost = said.marks.filter((mark, index) => said.said.includes(mark) && !dit.said.includes(dit.marks[index]!))
    return lost.length > 0 ? [`${place} leaves out ${lost.join(", ")}: ${dit.said}`] : []
  })
  expect(wrong).toEqual([])
})

test("nothing was left in English", () => {
  const left = places.filter((place) => {
    const [one, other] = [inEnglish.get(place)!, inFrench.get(place)!]
    const length = typeof one === "function" ? one.length : 0
    const said = filled(one, length).said
    return /\p{L}{3}/u.test(said.replace(/§\d+§/g, "")) && said === filled(other, length).said && !THE_SAME.has(said)
  })
  expect(left.map((place) => `${place}: ${filled(inEnglish.get(place)!, 3).said}`)).toEqual([])
})

describe("French is written as French is printed", () => {
  const written = [...inFrench].map(([place, entry]) => [place, filled(entry, 6).said] as const)
  const with_ = (fault: RegExp) =>
    written.filter(([, said]) => fault.test(said)).map(([place, said]) => `${place}: ${said}`)

  test("with a curved apostrophe", () => expect(with_(/\p{L}'\p{L}/u)).toEqual([]))
  test("with a space that does not break before ; ! ? % and a colon", () => {
    expect(with_(/(?<![\u00a0\u202f!?])[;!?%]|(?<![\u00a0\u202f]):(?=\s|$)/u)).toEqual([])
  })
  test("with spaces that do not break inside « »", () =>
    expect(with_(/«(?![\u00a0\u202f])|(?<![\u00a0\u202f])»/u)).toEqual([]))
  test("with its own quotation marks", () => expect(with_(/[“”]|\p{L}"|"\p{L}/u)).toEqual([]))
})

test("a French file brings in nothing of the page, which would wait for it at the start", () => {
  const files = readdirSync(join(folder, "fr")).map((name) => `fr/${name}`)
  const brought = files.flatMap((file) => {
    const { program } = parseSync(file, readFileSync(join(folder, file), "utf8"))
    return (program.body as { type: string; importKind?: string; source?: { value: string } | null }[])
      .filter(({ type, importKind, source }) => /^(Import|Export)/.test(type) && source && importKind !== "type")
      .filter(({ source }) => !/^\.\/\w+$/.test(source!.value))
      .map(({ source }) => `${file}: ${source!.value}`)
  })
  expect(brought).toEqual([])
})
