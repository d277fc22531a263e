import { spoken } from "./language"

/** The handles over the picture, beside what `handle` says of each. */
export const knobs = spoken("knobs", {
  label: "Handles in the picture",
  notPossible: (reason: string) => `Not possible: ${reason}`,
  /** After a change was given up; `label` names the number. */
  back: (label: string, value: string) => `${label} back to ${value}.`,
  extenderAdded: "Extender added.",
  extenderRemoved: "Extender removed.",
  extenderKept: "The extender was not changed.",
  /** The names of these changes in the history. */
  addExtender: "extender added",
  removeExtender: "extender removed",
})
