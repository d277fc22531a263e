import { spoken } from "./language"

/** The bar at the top of the page. */
export const bar = spoken("bar", {
  label: "Setup",
  fresh: "New",
  lessons: "Lessons",
  open: "Open…",
  save: "Save",
  takeAway: "Share or print",
  settings: "Settings",
})
