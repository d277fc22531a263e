import { spoken } from "./language"

/** The table of a rig's parts. */
export const partsTable = spoken("partsTable", {
  /** Where a part's centre is from the grip; only the last number has the unit. */
  place: (forward: string, up: string, side: string) => `forward ${forward}, up ${up}, side ${side}`,
})
