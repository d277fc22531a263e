import type { z } from "zod/mini"
import { failure, pathText, quoted, type Result, type SceneError, success } from "./errors"
import { migrate } from "./migrate"
import { relationErrors } from "./relations"
import { type Scene, sceneSchema } from "./schema"

/** A scene from the text of a file. Every error names its place; nothing is repaired by guessing. */
export function parseScene(text: string): Result<Scene> {
  let document: unknown
  try {
    // A byte-order mark is what some editors put first; JSON itself does not know it.
    document = JSON.parse(text.replace(/^\uFEFF/, ""))
  } catch (reason) {
    return failure({ code: "syntax", path: "", message: syntaxMessage(text, reason) })
  }
  return readScene(document)
}

/** A scene from an already parsed document of any known version. */
export function readScene(input: unknown): Result<Scene> {
  const migrated = migrate(input)
  return migrated.ok ? validateScene(migrated.value) : migrated
}

/** Checks a document of the current version and fills in the defaults. */
export function validateScene(document: unknown): Result<Scene> {
  const parsed = sceneSchema.safeParse(document, { reportInput: true })
  if (!parsed.success) return { ok: false, errors: parsed.error.issues.flatMap(issueErrors) }
  const broken = relationErrors(parsed.data)
  return broken.length > 0 ? { ok: false, errors: broken } : success(parsed.data)
}

type Issue = z.core.$ZodIssue

function issueErrors(issue: Issue): SceneError[] {
  const path = pathText(issue.path)
  if (issue.code === "unrecognized_keys") {
    return issue.keys.map((key) => ({
      code: "unknown-key",
      path: pathText([...issue.path, key]),
      message: "is not a key of this format; check its spelling",
    }))
  }
  if (issue.message.startsWith("is missing")) return [{ code: "missing", path, message: issue.message }]
  return [{ code: "not-allowed", path, message: plainMessage(issue) }]
}

/** Number and choice fields bring their own words (messages.ts); these are the shapes around them. */
function plainMessage(issue: Issue): string {
  switch (issue.code) {
    case "invalid_value":
      return `${given(issue)}; one of ${issue.values.map(String).join(", ")} is needed`
    case "too_big":
      return issue.origin === "string" || issue.origin === "array"
        ? `too long; at most ${String(issue.maximum)} ${issue.origin === "string" ? "characters" : "entries"}`
        : issue.message
    case "too_small":
      return issue.origin === "string" || issue.origin === "array"
        ? `too short; at least ${String(issue.minimum)} ${issue.origin === "string" ? "characters" : "entries"}`
        : issue.message
    case "invalid_type":
      return NUMBER_WORDS.test(issue.message)
        ? issue.message
        : `${given(issue)}; ${SHAPES[issue.expected] ?? issue.expected} is needed`
    default:
      return issue.message
  }
}

const NUMBER_WORDS = /is needed$/
const SHAPES: Readonly<Record<string, string>> = {
  string: "text in quotes",
  object: "an object",
  array: "a list",
  tuple: "a list of numbers",
  boolean: "true or false",
}

const given = (issue: Issue): string => (issue.input === undefined ? "is missing" : `${quoted(issue.input)} given`)

function syntaxMessage(text: string, reason: unknown): string {
  const detail = reason instanceof Error ? reason.message : String(reason)
  const position = /position (\d+)/.exec(detail)?.[1]
  if (text.trim() === "") return "the file is empty"
  if (position === undefined) return `not JSON: ${detail}`
  const before = text.slice(0, Number(position)).split("\n")
  return `not JSON: line ${before.length}, column ${(before.at(-1)?.length ?? 0) + 1}: ${detail.replace(/ (in JSON )?at position.*$/, "")}`
}
