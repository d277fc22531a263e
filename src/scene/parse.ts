import type { z } from "zod/mini"
import { failure, pathText, quoted, type Result, type SceneError, success } from "./errors"
import { jsonFault } from "./jsonFault"
import { measuredErrors } from "./measure/relations"
import { migrate } from "./migrate"
import { relationErrors } from "./relations"
import { type Scene, sceneSchema } from "./schema"

/** A scene from the text of a file. Every error names its place; nothing is repaired by guessing. */
export function parseScene(text: string): Result<Scene> {
  const document = parseJson(text)
  return document.ok ? readScene(document.value) : document
}

/** The document in the text of a file, whatever its format. */
export function parseJson(text: string): Result<unknown> {
  // A byte-order mark is what some editors put first; JSON itself does not know it.
  const json = text.replace(/^\uFEFF/, "")
  try {
    return success(JSON.parse(json) as unknown)
  } catch (reason) {
    return failure({ code: "syntax", path: "", message: syntaxMessage(json, reason) })
  }
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
  const broken = [...relationErrors(parsed.data), ...measuredErrors(parsed.data)]
  return broken.length > 0 ? { ok: false, errors: broken } : success(parsed.data)
}

export type Issue = z.core.$ZodIssue

/** What is wrong at one place of a document, in the words of this project. */
export function issueErrors(issue: Issue): SceneError[] {
  const path = pathText(issue.path)
  if (issue.code === "unrecognized_keys") {
    return issue.keys.map((key) => ({
      code: "unknown-key",
      path: pathText([...issue.path, key]),
      message: "is not a key of this format; check its spelling",
    }))
  }
  const message = plainMessage(issue)
  return [{ code: message.startsWith("is missing") ? "missing" : "not-allowed", path, message }]
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
      if (issue.origin === "string" && issue.minimum === 1) return "is empty; a name is needed"
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

function syntaxMessage(json: string, reason: unknown): string {
  if (json.trim() === "") return "the file is empty"
  const fault = jsonFault(json)
  if (fault !== null) return `not JSON: line ${fault.line}, column ${fault.column}: ${fault.needed}`
  return `not JSON: ${reason instanceof Error ? reason.message : String(reason)}`
}
