/** A passage of a document that quotes numbers, and what shows that they are true. */
export interface Quote {
  /** As it stands in the document, line breaks as spaces, with every digit it answers for. */
  readonly words: string
  /** Fails where the code says otherwise. */
  readonly holds: () => void | Promise<void>
}

/** What is written in digits but quotes no number: names of things, and the marks of numbered lists. */
const NAMES = [/^ *\d+\. /gm, /\b3D\b/g]

const unbroken = (text: string) => text.replace(/\s+/g, " ")

/** The quotes that do not stand in the document as they are written. */
export const staleQuotes = (text: string, quotes: readonly Quote[]): string[] =>
  quotes.map(({ words }) => words).filter((words) => !unbroken(text).includes(words))

/** The numbers of a document that no quote answers for, each with the words around it. */
export function untiedNumbers(text: string, quotes: readonly Quote[]): string[] {
  const nameless = NAMES.reduce((rest, name) => rest.replace(name, " "), text)
  const longestFirst = [...quotes].sort((a, b) => b.words.length - a.words.length)
  const rest = longestFirst.reduce((left, { words }) => left.replaceAll(words, "…"), unbroken(nameless))
  // A digit inside a word, as in float64 or view3d, is part of its name.
  return [...rest.matchAll(/(?<![\p{L}\d])\d[\d.]*/gu)].map(({ index }) =>
    rest.slice(Math.max(0, index - 30), index + 20),
  )
}
