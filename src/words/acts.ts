import { spoken } from "./language"

/**
 * Changes by their names in the history: they stand in the tips of Undo and Redo, and are said when one is undone. Those
 * of the sheets are in `edits`.
 */
export const acts = spoken("acts", {
  undo: "Undo",
  redo: "Redo",
  undone: (change: string) => `Undone: ${change}`,
  redone: (change: string) => `Redone: ${change}`,
  opened: (name: string) => `opened ${name}`,
  named: "setup named",
  /** `number` is "Front rod, rating". */
  cleared: (number: string) => `${number} cleared`,
  noSuchNumber: "this scene has no such number",
})
