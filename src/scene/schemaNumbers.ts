import * as z from "zod/mini"
import { fileFaults as faults } from "../words/fileFaults"
import { quoted } from "./errors"
import type { NumberField } from "./fields"
import { rangeMessage } from "./messages"

// A strict Content-Security-Policy forbids compiled validators. What no schema here has words for is said in ours too.
z.config({ jitless: true, localeError: () => faults.unreadable })

/** A number in its field's range; every way to miss it gets the same message, with the whole range in it. */
export const needed = (f: NumberField) => {
  const error = (issue: { input?: unknown }) => rangeMessage(f, issue.input)
  const kind = f.whole ? z.int({ error }) : z.number({ error })
  return kind.check(z.gte(f.min, { error }), z.lte(f.max, { error }))
}
export const optional = (f: NumberField) => z.optional(needed(f))
export const defaulted = (f: NumberField) => z._default(needed(f), f.fallback ?? 0)
export const triple = (f: NumberField) => z.tuple([needed(f), needed(f), needed(f)])
export const range = (f: NumberField) => z.optional(z.tuple([needed(f), needed(f)]))
export const text = (max: number) => z.string().check(z.maxLength(max))

/** Why an object whose `key` selects its kind cannot be read. */
export const choiceMessage =
  (key: string, choices: readonly string[]) =>
  (issue: { input?: unknown }): string => {
    const { input } = issue
    const allowed = choices.join(", ")
    if (input === undefined) return faults.noKindObject(key, allowed)
    if (input === null || typeof input !== "object" || Array.isArray(input)) {
      return faults.kindObject(quoted(input), key, allowed)
    }
    const given = (input as Record<string, unknown>)[key]
    return given === undefined ? faults.noKind(key, allowed) : faults.kind(key, quoted(given), allowed)
  }
