import type { Ratio } from "../bench"

// Known ratios for the bench runner's own test.
export const run = async (): Promise<Ratio[]> => [
  { what: "planted", ratio: 2.5, against: "another", detail: "5 ms to 2 ms" },
  { what: "planted too", ratio: 0.3333333, against: "a third", detail: "1 ms to 3 ms" },
]
