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
