/** The first place where a text stops being JSON, counted from 1 as editors do, and what had to stand there. */
export interface JsonFault {
  readonly line: number
  readonly column: number
  readonly needed: string
}

type Wanted = "value" | "value or ]" | "key" | "key or }" | "colon" | ", or ]" | ", or }" | "end"

const words: Record<Wanted, string> = {
  value: "a value is needed",
  "value or ]": 'a value or "]" is needed',
  key: "a key in double quotes is needed",
  "key or }": 'a key in double quotes or "}" is needed',
  colon: '":" is needed',
  ", or ]": '"," or "]" is needed',
  ", or }": '"," or "}" is needed',
  end: "nothing more may follow",
}

/**
 * Finds what is wrong with a text that JSON.parse refuses; null for one that it takes. Engines word and place their
 * own complaint differently, and some not at all, so the place is found here (grammar of RFC 8259). Open brackets are
 * kept on a list, not on the call stack: no depth of nesting overflows it.
 */
export function jsonFault(text: string): JsonFault | null {
  const open: ("{" | "[")[] = []
  let wanted = "value" as Wanted
  let at = 0
  const afterValue = (): Wanted => (open.length === 0 ? "end" : open.at(-1) === "{" ? ", or }" : ", or ]")
  while (true) {
    at = skipSpace(text, at)
    const letter = text[at]
    if (letter === undefined) return wanted === "end" ? null : fault(text, at, `the file ends here; ${words[wanted]}`)
    if (wanted === "end") return fault(text, at, words.end)
    if (letter === closing(wanted)) {
      open.pop()
      at++
      wanted = afterValue()
    } else if (wanted === "colon" || wanted === ", or ]" || wanted === ", or }") {
      if (letter !== (wanted === "colon" ? ":" : ",")) return fault(text, at, words[wanted])
      at++
      wanted = wanted === ", or }" ? "key" : "value"
    } else if (letter === '"') {
      const end = stringEnd(text, at)
      if (typeof end !== "number") return fault(text, end.at, end.needed)
      at = end
      wanted = wanted === "key" || wanted === "key or }" ? "colon" : afterValue()
    } else if (wanted === "key" || wanted === "key or }") {
      return fault(text, at, words[wanted])
    } else if (letter === "{" || letter === "[") {
      open.push(letter)
      at++
      wanted = letter === "{" ? "key or }" : "value or ]"
    } else {
      SCALAR.lastIndex = at
      if (!SCALAR.test(text)) return fault(text, at, words[wanted])
      at = SCALAR.lastIndex
      wanted = afterValue()
    }
  }
}

const SCALAR = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y

const closing = (wanted: Wanted): string | undefined =>
  wanted.endsWith("]") ? "]" : wanted.endsWith("}") ? "}" : undefined

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
    if (letter < " ") return { at, needed: "no line break or other control character may stand in a text" }
    if (letter !== "\\") at++
    else if ('"\\/bfnrt'.includes(text[at + 1] ?? "x")) at += 2
    else if (text[at + 1] === "u" && HEX.test(text.slice(at + 2, at + 6))) at += 6
    else
      return { at, needed: 'a backslash stands before ", \\, /, b, f, n, r, t or u with four hexadecimal digits only' }
  }
  return { at: start, needed: "the text that begins here has no closing quote" }
}

function fault(text: string, at: number, needed: string): JsonFault {
  const before = text.slice(0, at)
  const line = before.split("\n").length
  return { line, column: at - before.lastIndexOf("\n"), needed }
}
