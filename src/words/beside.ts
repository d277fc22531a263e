import { spoken } from "./language"

/** A number beside the same one of another setup, or of the bow without its rig. */
export const beside = spoken("beside", {
  /** The other setup's number, and `same` or `change`. */
  held: (other: string, change: string) => `held ${other}, ${change}`,
  /** Of a setup only looked at for the moment, in a list. */
  there: (other: string, change: string) => `there ${other}, ${change}`,
  same: "the same",
  change: (by: string) => `change ${by}`,
  /** Turn resistance; `times` is "2.4×". */
  bare: (times: string) => `${times} the bare bow`,
  /** In the picture, at the other setup's balance point. */
  here: "other setup balances here",
})
