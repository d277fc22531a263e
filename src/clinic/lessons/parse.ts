import { failure, quoted, type Result, type SceneError, success } from "../../scene/errors"
import { type Issue, issueErrors, parseJson } from "../../scene/parse"
import { lessonFaults } from "../../words/lessonFaults"
import { LESSON_FORMAT, LESSON_VERSION, type LessonFile, lessonSchema } from "./schema"

/** A lesson from the text of a file, its setups not yet looked at. Every error names its place. */
export function parseLesson(text: string): Result<LessonFile> {
  const document = parseJson(text)
  if (!document.ok) return document
  const wrong = envelopeError(document.value)
  if (wrong !== null) return failure(wrong)
  const parsed = lessonSchema.safeParse(document.value, { reportInput: true })
  return parsed.success
    ? success(parsed.data)
    : { ok: false, errors: parsed.error.issues.flatMap(plainIssues).flatMap(issueErrors) }
}

/**
 * Of a text what is wrong with it as one for all readers, or as one for each language, whichever the file has there; of
 * anything else what is wrong with it.
 */
function plainIssues(issue: Issue): Issue[] {
  if (issue.code !== "invalid_union") return [issue]
  const { input, errors, path } = issue
  const byLanguage = typeof input === "object" && input !== null && !Array.isArray(input)
  return errors[byLanguage ? 1 : 0]!.map((inner) => ({ ...inner, path: [...path, ...inner.path] }))
}

function envelopeError(input: unknown): SceneError | null {
  const broken = (code: SceneError["code"], path: string, message: string): SceneError => ({ code, path, message })
  if (input === null || typeof input !== "object" || Array.isArray(input)) {
    return broken("not-a-scene", "", lessonFaults.noObject(quoted(input)))
  }
  const { format, version } = input as { format?: unknown; version?: unknown }
  if (format !== LESSON_FORMAT) {
    return broken("not-a-scene", "format", lessonFaults.otherFormat(quoted(format), LESSON_FORMAT))
  }
  if (typeof version === "number" && version > LESSON_VERSION) {
    return broken("newer-version", "version", lessonFaults.newer(String(version), String(LESSON_VERSION)))
  }
  return null
}
