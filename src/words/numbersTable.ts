import { spoken } from "./language"

/** All numbers of a setup as a table for a spreadsheet. */
export const numbersTable = spoken("numbersTable", {
  /** Column headings. A line's key is that of the report, the same in every language. */
  key: "key",
  what: "what",
  value: "value",
  unit: "unit",
  spread: "plus or minus, 95 %",
  /** How the bow is held. */
  draw: "Held at: share of the draw",
  slope: "Held at: slope",
  cant: "Held at: cant",
  /** `axis` is "pitch". */
  turn: (axis: string) => `Turn resistance, ${axis}`,
  /** Of one part of the bow. */
  mass: (part: string) => `${part}: mass`,
  forward: (part: string) => `${part}: ahead of the grip`,
  up: (part: string) => `${part}: above the grip`,
  side: (part: string) => `${part}: to the right`,
  noseDown: (part: string) => `${part}: nose-down moment`,
})
