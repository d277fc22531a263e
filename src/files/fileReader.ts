import type { Bench } from "../state/bench"
import { looksLikeKit } from "./kitFile"

export { parseScene } from "../scene/parse"

/** Opens a text that is meant as a kit; false when it is not. */
export async function openedAsKit(bench: Bench, name: string, text: string): Promise<boolean> {
  if (!looksLikeKit(name, text)) return false
  const { openDroppedKit } = await import("./openKit")
  openDroppedKit(bench, name, text)
  return true
}

/** Puts a text that is meant as a lesson over the bench, which reads it; false when it is not. */
export function openedAsLesson(bench: Bench, name: string, text: string): boolean {
  if (!/"format"\s*:\s*"bow-balance-bench-lesson"/.test(text)) return false
  bench.setView({ lesson: { kind: "file", name, text }, notice: null })
  return true
}
