/** What the words after a command come to, flags apart. */
export type Words =
  | { readonly kind: "read"; readonly files: readonly string[]; readonly json: boolean }
  | { readonly kind: "help" }
  | { readonly kind: "wrong"; readonly reason: string }

/** Takes a flag's value, undefined where none is given; returns what is wrong with it, or null. */
export type Take = (given: string | undefined) => string | null

/**
 * Reads the words after a command. Flags and files in any order; `--slope 20` and `--slope=20` both; what follows `--`
 * is a file whatever it looks like. `flagNamed` knows the flags besides `--json` and `--help`; each is taken once only,
 * since one of two would be lost without a word.
 */
export function readWords(words: readonly string[], flagNamed: (name: string) => Take | undefined): Words {
  const files: string[] = []
  const taken = new Set<string>()
  let json = false
  for (let index = 0; index < words.length; index++) {
    const word = words[index]!
    if (word === "--") {
      files.push(...words.slice(index + 1))
      break
    }
    if (!word.startsWith("-") || word === "-") {
      files.push(word)
      continue
    }
    if (word === "--help" || word === "-h") return { kind: "help" }
    if (word === "--json") {
      json = true
      continue
    }
    const equals = word.indexOf("=")
    const name = equals < 0 ? word : word.slice(0, equals)
    const take = flagNamed(name)
    if (take === undefined) return wrong(`unknown option ${name}`)
    if (taken.has(name)) return wrong(`${name} is given twice`)
    taken.add(name)
    const reason = take(equals < 0 ? words[++index] : word.slice(equals + 1))
    if (reason !== null) return wrong(reason)
  }
  return { kind: "read", files, json }
}

const wrong = (reason: string): Words => ({ kind: "wrong", reason })

/** `"abc"`, or "nothing" where a value is missing: what was given, for a message. */
export const givenText = (given: string | undefined): string => (given === undefined ? "nothing" : `"${given}"`)

/** Decimal notation only: an empty word or a hexadecimal number is more likely a slip than a slope. */
const DECIMAL = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i

/** The number a word says in decimal notation, else NaN. */
export const decimal = (text: string | undefined): number =>
  text !== undefined && DECIMAL.test(text) ? Number(text) : Number.NaN
