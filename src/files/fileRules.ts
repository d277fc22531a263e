import { type FileRules, standingRules } from "../state/check"

/**
 * The whole file's rules for the bench, fetched when the page has drawn its first view: the schema's validator is a
 * tenth of what the first view may weigh. Until it is there only numbers can be changed, since the sheets that add and
 * remove parts come later too, and numbers are checked by their commands.
 */
export function arrivingFileRules(): { rules: FileRules; fetch: () => Promise<void> } {
  let now: FileRules = standingRules
  return {
    rules: (scene) => now(scene),
    async fetch() {
      const { validateScene } = await import("../scene/parse")
      now = (scene) => {
        const valid = validateScene(scene)
        return valid.ok ? [] : valid.errors
      }
    },
  }
}
