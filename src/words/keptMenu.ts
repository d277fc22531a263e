import { spoken } from "./language"

/** The menu of unsaved work that made room for another bow. `name` is what the setup is called. */
export const keptMenu = spoken("keptMenu", {
  title: "Kept work",
  about: "Unsaved work that made room for another bow. It stays in this browser until you bring it back or discard it.",
  bringBack: "Bring it back",
  discard: "Discard",
  /** The same buttons for a screen reader. */
  bringBackThis: (name: string) => `Bring back ${name}`,
  discardThis: (name: string) => `Discard ${name}`,
  /** Said once it is done. */
  isBack: (name: string) => `${name} is back`,
  isGone: (name: string) => `${name} discarded; Undo brings it back`,
  notBack: "That work was not brought back.",
  /** Names of these changes in the history. */
  broughtBack: (name: string) => `${name} brought back`,
  discarded: (name: string) => `${name} discarded`,
})
