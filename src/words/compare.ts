import { spoken } from "./language"

/** Holding a setup beside the one on the bench. */
export const compare = spoken("compare", {
  hold: "Hold to compare",
  file: "Compare a file…",
  /** Before the name of the setup that is held. */
  with: "Compared with",
  swap: "Swap the two setups",
  stop: "Stop comparing",
  /** Said once it is done. */
  held: "Held to compare",
  heldThis: (name: string) => `Compared with ${name}`,
  onBench: (name: string) => `On the bench: ${name}`,
  /** The name of this change in the history. */
  swapped: "setups swapped",
})
