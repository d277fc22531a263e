import type { beside as english } from "../beside"

export const beside: typeof english = {
  held: (other, change) => `gardé ${other}, ${change}`,
  there: (other, change) => `celui-ci ${other}, ${change}`,
  same: "pareil",
  change: (by) => `écart ${by}`,
  bare: (times) => `${times} l’arc seul`,
  here: "équilibre de l’autre réglage",
}
