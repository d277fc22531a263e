import { spoken } from "./language"

/** The bar at the top of the page. */
export const bar = spoken("bar", {
  label: "Setup",
  fresh: "New",
  examples: "Examples",
  lessons: "Lessons",
  open: "Open…",
  save: "Save",
  saveAs: "Save as…",
  takeAway: "Share or print",
  settings: "Settings",
  /** Of the field beside the title. */
  name: "Name of this setup",
  /** What stands beside that field. */
  notSaved: "not saved to a file yet",
  asShipped: "as shipped",
  savedIn: (file: string) => `saved in ${file}`,
  /** For "not saved to a file yet", where there is no room for it. */
  unsaved: "unsaved",
  /** Tip of a button: Undo or Redo, and which change. */
  step: (command: string, change: string) => `${command}: ${change}`,
})
