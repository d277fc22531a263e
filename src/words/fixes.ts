import { spoken } from "./language"

/** The list of changes that would bring a missed target back; their own words are in `suggestion`. */
export const fixes = spoken("fixes", {
  title: "Off target",
  tryIt: "Try it",
  /** The same button for a screen reader. */
  tryThis: (change: string) => `Try: ${change}`,
  /** Said once it is done; `change` is a sentence without its full stop. */
  done: (change: string) => `${change}. Undo takes it back.`,
})
