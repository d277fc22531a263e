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

export type Result<T, E = readonly SceneError[]> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly errors: E }

export const success = <T>(value: T): Result<T, never> => ({ ok: true, value })
export const failure = (...errors: SceneError[]): Result<never> => ({ ok: false, errors })

export type PathStep = string | number

/** `["rig", 0, "chain", 2, "lengthMm"]` as `rig[0].chain[2].lengthMm`. */
export function pathText(steps: readonly PropertyKey[]): string {
  let text = ""
  for (const step of steps) {
    if (typeof step === "number") text += `[${step}]`
    else text += text === "" ? String(step) : `.${String(step)}`
  }
  return text
}

/** One line: place, then reason. */
export const errorLine = (error: SceneError): string =>
  error.path === "" ? error.message : `${error.path}: ${error.message}`

/** A value from a file, short enough to quote. */
export function quoted(value: unknown): string {
  if (value === undefined) return "nothing"
  if (typeof value === "number") return String(value)
  if (Array.isArray(value)) return `a list of ${value.length}`
  if (value !== null && typeof value === "object") return "an object"
  const text = JSON.stringify(value)
  return text.length > 60 ? `${text.slice(0, 57)}…"` : text
}
