import { readFileSync } from "node:fs"

export type FileText = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly reason: string }

const reasons: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  EISDIR: "this is a folder, not a file",
  EACCES: "this file may not be read",
  EPERM: "this file may not be read",
}

/** A file's text, or in plain words why there is none. */
export function readText(file: string): FileText {
  try {
    // Strict decoding: a file of another kind should say so, not fail later over a replaced letter.
    return { ok: true, text: new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(file)) }
  } catch (problem) {
    if (problem instanceof TypeError) return { ok: false, reason: "this is not a text file in UTF-8" }
    const code = (problem as NodeJS.ErrnoException).code ?? ""
    return { ok: false, reason: reasons[code] ?? `it cannot be read (${code || String(problem)})` }
  }
}
