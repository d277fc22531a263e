import { sceneFaults as faults } from "../words/sceneFaults"
import type { Words } from "./words"

/** The closed set of things that can be wrong with a scene. */
export type SceneErrorCode =
  | "syntax"
  | "not-a-scene"
  | "newer-version"
  | "missing"
  | "unknown-key"
  | "not-allowed"
  | "contradiction"
  | "unsolvable"

export interface SceneError {
  readonly code: SceneErrorCode
  /** Where, as in `rig[0].chain[2].lengthMm`; empty for the document as a whole. */
  readonly path: string
  /** What was given and what is allowed, in plain words and the file's units, without the path. */
  readonly message: string
  /** The message in parts, where there are numbers in it that the page says in its own units. */
  readonly words?: Words
}

export { failure, pathText, type PathStep, type Result, success } from "./result"

/** One line: place, then reason. */
export const errorLine = (error: SceneError): string =>
  error.path === "" ? error.message : faults.at(error.path, error.message)

/** A value from a file, short enough to quote. */
export function quoted(value: unknown): string {
  if (value === undefined) return faults.nothing
  if (typeof value === "number") return String(value)
  if (Array.isArray(value)) return faults.list(value.length)
  if (value !== null && typeof value === "object") return faults.object
  const text = JSON.stringify(value)
  if (typeof value !== "string") return text
  const inner = text.slice(1, -1)
  return faults.text(text.length > 60 ? `${inner.slice(0, 56)}…` : inner)
}
