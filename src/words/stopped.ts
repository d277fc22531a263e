import { spoken } from "./language"

/** The screen of a page that failed. */
export const stopped = spoken("stopped", {
  title: "The bench has stopped",
  kept: (setup: string) =>
    `Something in the page failed. Your setup “${setup}” is still here and is kept in this browser.`,
  reload: "Reload",
  save: "Save the setup to a file",
  copy: "Copy the details",
  startOver: "Start with a new bow",
  /** Asked before that is done. */
  sure: "Start with a new bow? Save the setup to a file first if you want to keep it.",
})
