import { spoken } from "./language"

/** What the page says of its own: work that is kept, and what could not be fetched. */
export const notices = spoken("notices", {
  /** Before what was refused. */
  notDone: "Not done.",
  /** Under a list of errors that is cut short. */
  more: (count: number) => `and ${count} more`,
  close: "Close",
  partAway: "The part of the page that does this could not be fetched. Is the network there?",
  rulesAway:
    "The part of the page that checks a whole setup could not be fetched. Numbers are checked all the same; a setup with added parts may not open again. Is the network there?",
  notKept:
    "This browser does not keep unsaved work (its storage is full or switched off). Save to a file before you leave.",
  back: (time: string) => `Your unsaved work from ${time} is back.`,
  /** `more` is how many others are kept beside the one of that time. */
  kept: (time: string, more: number) => `Unsaved work from ${time}${more === 0 ? "" : ` and ${more} more`} is kept.`,
  bringBack: "Bring it back",
  addressNotOpened: "The scene in the address was not opened.",
  unread:
    "Earlier work is kept in this browser, but the part of the page that reads it could not be fetched. Reload when the network is there.",
})
