import { spoken } from "./language"

/** Setups as files and links: picking, opening, saving. */
export const files = spoken("files", {
  /** A dialog. */
  saveAs: { title: "Save as", name: "File name", save: "Save", cancel: "Cancel" },
  /** The menu of examples. */
  examples: "Invented bows to start from. What is on the bench now is one Undo away.",
  listAway: "The list could not be fetched. Is the network there?",
  /** Said once it is done. */
  opened: (name: string) => `Opened ${name}`,
  savedAs: (file: string) => `Saved as ${file}`,
  notOpened: (name: string) => `“${name}” was not opened.`,
  unread: (file: string) => `“${file}” could not be read.`,
  /** A file that was to be opened, and one that was to be compared with. */
  toOpen: {
    tooBig: (file: string, megabytes: string) =>
      `“${file}” was not opened: it is ${megabytes} MB, a scene file is far below 2 MB.`,
    readerAway: (file: string) =>
      `“${file}” was not opened: the part of the page that reads files could not be fetched. Is the network there?`,
    wrong: (file: string) => `“${file}” was not opened; the bench is as it was.`,
  },
  toCompare: {
    tooBig: (file: string, megabytes: string) =>
      `“${file}” was not compared: it is ${megabytes} MB, a scene file is far below 2 MB.`,
    readerAway: (file: string) =>
      `“${file}” was not compared: the part of the page that reads files could not be fetched. Is the network there?`,
    wrong: (file: string) => `“${file}” was not compared; the bench is as it was.`,
  },
  lessonNotOpened: (lesson: string) => `The lesson “${lesson}” was not opened; the bench is as it was.`,
  /** What comes with the bench, by the name in the address. */
  scene: {
    noName: (id: string) => `scene "${id}" is not the name of a scene that comes with the bench`,
    unknown: (id: string) => `scene "${id}" does not come with the bench`,
    away: (id: string) => `scene "${id}" could not be fetched; is the network there?`,
  },
  lesson: {
    noName: (id: string) => `lesson "${id}" is not the name of a lesson that comes with the bench`,
    unknown: (id: string) => `lesson "${id}" does not come with the bench`,
    away: (id: string) => `lesson "${id}" could not be fetched; is the network there?`,
  },
  /** After a colon or as a line of its own. */
  linkReaderAway: "the part of the page that reads links could not be fetched; is the network there?",
  linkNotOpened:
    "The setup in the link was not opened: the part of the page that reads links could not be fetched. Is the network there?",
  /** A file's name where the setup has none; plain letters. */
  unnamed: "bow",
})
