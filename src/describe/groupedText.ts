import { decimalMark } from "../words/numbers"
import { typedNumbers } from "../words/typedNumbers"

/** One to three digits, a comma and just three more: a decimal comma or one that parts thousands, nobody can tell. */
const EITHER = /^([+\-\u2212]?[1-9]\d{0,2}),(\d{3})(?![\d.,])/

/**
 * Why a typed number like "2,650" cannot be taken, with both ways of writing it; null where its comma can only be a
 * decimal one, as in "2,65" or "0,650" or wherever the reader's own decimal mark is a comma, or where there is none.
 */
export function groupedProblem(text: string, mark = decimalMark): string | null {
  const found = EITHER.exec(text.trim())
  if (found === null || mark === ",") return null
  const [typed, whole, rest] = found as unknown as [string, string, string]
  return typedNumbers.twoWays(typed, whole + rest, `${whole}.${rest.replace(/0+$/, "") || "0"}`)
}
