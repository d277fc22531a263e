import { spoken } from "./language"

/** The log of setups that were shot: the form, the list, two of them compared, and the log as a table. */
export const triedSetups = spoken("triedSetups", {
  heading: "Tried setups",
  note: "Note the rig that is on the bow now, with how it shot. Its numbers can be looked up and compared later.",
  saveTable: "Save the log as CSV",
  /** An entry by its number; `dated` is around either. */
  setup: (number: number) => `Setup ${number}`,
  named: (number: number, name: string) => `Setup ${number}: ${name}`,
  dated: (title: string, date: string) => `${title} (${date})`,
  /** What was noted of one, parts in a line. */
  felt: (rating: number) => `felt ${rating} of 5`,
  feltAs: (rating: number, feel: string) => `felt ${rating} of 5: ${feel}`,
  scored: (scores: string) => `scores ${scores}`,
  scoredInAll: (scores: string, total: string) => `scores ${scores}, total ${total}`,
  grouped: (size: string) => `group ${size}`,
  form: {
    name: "Name",
    nameExample: "long bar, two discs",
    feel: "How it felt, in a few words",
    rating: "From 1, poor, to 5, just right",
    scores: "Scores",
    /** Where a comma is the decimal mark; elsewhere the next. */
    partedBySpaces: "Scores are numbers with spaces or semicolons between them.",
    partedByCommas: "Scores are numbers with commas between them.",
    /** "1,250": `one` is it as one number, `apart` as two. */
    twoWays: (typed: string, one: string, apart: string) =>
      `“${typed}” can be read two ways: write ${one} for one score, or ${apart} for two.`,
    note: "Note",
    add: "Note this setup",
    keep: (setup: number) => `Keep the change of setup ${setup}`,
    leave: "Leave it as it was",
    added: "Setup noted.",
    changed: (setup: number) => `Setup ${setup} changed.`,
  },
  /** Buttons of an entry, each before its title where it is read aloud; then what is announced. */
  entry: {
    putOn: "Put on the bow",
    onBow: (title: string) => `${title} is on the bow.`,
    hold: "Hold to compare",
    change: "Change",
    remove: "Remove",
    removed: (title: string) => `${title} removed; Undo brings it back`,
  },
  compared: {
    caption: "Two setups compared",
    /** Two lists of setups, each after its word. */
    first: "Compare",
    second: "with",
    /** Head of the first column, and of those that hold the rig on the bow and the change. */
    number: "Number",
    now: "now",
    change: "change",
    rigNow: "The rig on the bow now",
    /** A row: what is compared and its unit. */
    row: (what: string, unit: string) => `${what}, ${unit}`,
    turn: (axis: string) => `Turn resistance, ${axis}`,
  },
  /** Heads of the table's columns. */
  table: {
    setup: "setup",
    date: "date",
    name: "name",
    rating: "felt, 1 to 5",
    feel: "feel",
    scores: "scores",
    total: "total",
    group: "group mm",
    note: "note",
  },
})
