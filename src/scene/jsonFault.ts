import { fileFaults as faults } from "../words/fileFaults"

/** The first place where a text stops being JSON, counted from 1 as editors do, and what had to stand there. */
export interface JsonFault {
  readonly line: number
  readonly column: number
  readonly needed: string
}

/** What has to come next; each has its sentence in the catalogue. */
type Wanted = "value" | "valueOrEnd" | "key" | "keyOrEnd" | "colon" | "commaOrBracket" | "commaOrBrace" | "end"

const words: Readonly<Record<Wanted, string>> = faults.json

/**
 * Finds what is wrong with a text that JSON.parse refuses; null for one that it takes. Engines word and place their
 * own complaint differently, and some not at all, so the place is found here (grammar of RFC 8259). Open brackets are
 * kept on a list, not on the call stack: no depth of nesting overflows it.
 */
export function jsonFault(text: string): JsonFault | null {
  const open: ("{" | "[")[] = []
  let wanted = "value" as Wanted
  let at = 0
  const afterValue = (): Wanted => (open.length === 0 ? "end" : open.at(-1) === "{" ? "commaOrBrace" : "commaOrBracket")
  while (true) {
    at = skipSpace(text, at)
    const letter = text[at]
    if (letter === undefined) return wanted === "end" ? null : fault(text, at, faults.endsHere(words[wanted]))
    if (wanted === "end") return fault(text, at, words.end)
    if (letter === closing(wanted)) {
      open.pop()
      at++
      wanted = afterValue()
    } else if (wanted === "colon" || wanted === "commaOrBracket" || wanted === "commaOrBrace") {
      if (letter !== (wanted === "colon" ? ":" : ",")) return fault(text, at, words[wanted])
      at++
      wanted = wanted === "commaOrBrace" ? "key" : "value"
    } else if (letter === '"') {
      const end = stringEnd(text, at)
      if (typeof end !== "number") return fault(text, end.at, end.needed)
      at = end
      wanted = wanted === "key" || wanted === "keyOrEnd" ? "colon" : afterValue()
    } else if (wanted === "key" || wanted === "keyOrEnd") {
      return fault(text, at, words[wanted])
    } else if (letter === "{" || letter === "[") {
      open.push(letter)
      at++
      wanted = letter === "{" ? "keyOrEnd" : "valueOrEnd"
    } else {
      SCALAR.lastIndex = at
      if (!SCALAR.test(text)) return fault(text, at, words[wanted])
      at = SCALAR.lastIndex
      wanted = afterValue()
    }
  }
}

const SCALAR = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y

const closing = (wanted: Wanted): string | undefined => {
  if (wanted === "valueOrEnd" || wanted === "commaOrBracket") return "]"
  return wanted === "keyOrEnd" || wanted === "commaOrBrace" ? "}" : undefined
}

function skipSpace(text: string, from: number): number {
  let at = from
  while (at < text.length && " \t\n\r".includes(text[at]!)) at++
  return at
}

const HEX = /^[0-9a-fA-F]{4}$/

/** Just past a string's closing quote, or where it goes wrong. */
function stringEnd(text: string, start: number): number | { at: number; needed: string } {
  let at = start + 1
  while (at < text.length) {
    const letter = text[at]!
    if (letter === '"') return at + 1
    if (letter < " ") return { at, needed: faults.json.control }
    if (letter !== "\\") at++
    else if ('"\\/bfnrt'.includes(text[at + 1] ?? "x")) at += 2
    else if (text[at + 1] === "u" && HEX.test(text.slice(at + 2, at + 6))) at += 6
    else return { at, needed: faults.json.backslash }
  }
  return { at: start, needed: faults.json.unclosed }
}

function fault(text: string, at: number, needed: string): JsonFault {
  const before = text.slice(0, at)
  const line = before.split("\n").length
  return { line, column: at - before.lastIndexOf("\n"), needed }
}
