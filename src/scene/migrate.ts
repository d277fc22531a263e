import { fileFaults as faults } from "../words/fileFaults"
import { failure, quoted, type Result, success } from "./errors"

export const FORMAT = "bow-balance-bench"
export const CURRENT_VERSION = 1

type Document = Readonly<Record<string, unknown>>

/** One step of the file's history: turns a document of version `from` into one of `from + 1`. Pure. */
export interface Migration {
  readonly from: number
  /** What changed, for DEVELOPERS.md and for the person whose file is read. */
  readonly what: string
  readonly step: (document: Document) => Document
}

/** Every step so far, oldest first, without gaps. Version 1 is the first, so there is none yet. */
export const migrations: readonly Migration[] = []

/** Whether steps lead from version 1 to `current` with none missing, doubled or out of order. */
export const withoutGaps = (steps: readonly Migration[], current: number): boolean =>
  steps.length === current - 1 && steps.every((step, index) => step.from === index + 1)

/**
 * Brings a parsed document to the current version. Refuses what is no scene, has no version, or is newer.
 * The result still has to be validated.
 */
export function migrate(
  input: unknown,
  steps: readonly Migration[] = migrations,
  current: number = CURRENT_VERSION,
): Result<Document> {
  if (input === null || typeof input !== "object" || Array.isArray(input)) {
    return failure({ code: "not-a-scene", path: "", message: faults.notAScene(quoted(input)) })
  }
  let document = input as Document
  if (document.format !== FORMAT) {
    return failure({ code: "not-a-scene", path: "format", message: faults.format(quoted(document.format), FORMAT) })
  }
  const { version } = document
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) {
    return failure({ code: "not-allowed", path: "version", message: faults.version(quoted(version), current) })
  }
  if (version > current) {
    return failure({ code: "newer-version", path: "version", message: faults.newer(String(version), current) })
  }
  for (const migration of steps.slice(version - 1)) {
    document = { ...migration.step(document), version: migration.from + 1 }
  }
  return success(document)
}
