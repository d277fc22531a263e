import type { SceneError } from "./errors"

/** What a step that may be refused gives. Apart from `errors.ts`, so that what says nothing needs no words. */
export type Result<T, E = readonly SceneError[]> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly errors: E }

export const success = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value })
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
