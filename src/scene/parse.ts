import type { z } from "zod/mini"
import { fileFaults as faults } from "../words/fileFaults"
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
  } catch {
    return failure({ code: "syntax", path: "", message: syntaxMessage(json) })
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
      message: faults.unknownKey,
    }))
  }
  return [{ code: issue.input === undefined ? "missing" : "not-allowed", path, message: plainMessage(issue) }]
}

/** Number and choice fields bring their own words (messages.ts); these are the shapes around them. */
function plainMessage(issue: Issue): string {
  const { input, message } = issue
  switch (issue.code) {
    case "invalid_value": {
      const allowed = issue.values.map(String).join(", ")
      return input === undefined ? faults.noneOf(allowed) : faults.oneOf(quoted(input), allowed)
    }
    case "too_big":
      if (issue.origin === "string") return faults.longText(Number(issue.maximum))
      return issue.origin === "array" ? faults.longList(Number(issue.maximum)) : message
    case "too_small":
      if (issue.origin === "string" && issue.minimum === 1) return faults.noName
      if (issue.origin === "string") return faults.shortText(Number(issue.minimum))
      return issue.origin === "array" ? faults.shortList(Number(issue.minimum)) : message
    case "invalid_type": {
      // A number of a field, or an object of one of several kinds, brings its own words.
      if (message !== faults.unreadable) return message
      const shape = SHAPES[issue.expected] ?? faults.shapes.other
      return input === undefined ? faults.noShape(shape) : faults.shape(quoted(input), shape)
    }
    default:
      return message
  }
}

const SHAPES: Readonly<Record<string, string>> = faults.shapes

function syntaxMessage(json: string): string {
  if (json.trim() === "") return faults.empty
  const fault = jsonFault(json)
  return fault === null ? faults.notJson : faults.notJsonAt(fault.line, fault.column, fault.needed)
}
