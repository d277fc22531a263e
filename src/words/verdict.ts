import { spoken } from "./language"

/** How a number stands to what was asked of it. */
export const verdict = spoken("verdict", {
  /** `by` is a distance, a moment or a mass with its unit, or `lessThan` one; `way` one of the words below. */
  missed: (by: string, way: string) => `${by} ${way}`,
  forward: { under: "too far back", over: "too far forward" },
  up: { under: "too low", over: "too high" },
  side: { under: "too far left", over: "too far right" },
  lift: { under: "too little lift", over: "too much lift" },
  heavy: "too heavy",
  lessThan: (amount: string) => `less than ${amount}`,
  inside: "inside the target",
  within: "within the limit",
  noTarget: "no target set",
  noLimit: "no limit set",
  target: (span: string) => `target ${span}`,
  atMost: (mass: string) => `at most ${mass}`,
  /** A target where a dash would be read as a minus sign: "−5 to 5 mm". */
  fromTo: (from: string, to: string) => `${from} to ${to}`,
  /** What the bow does at full draw if the hand lets it. */
  balanced: "balanced",
  rises: "front rises",
  drops: "front drops",
  /** After a verdict and a comma: it hangs on what no reading has determined. */
  assumed: "if the riser is as assumed",
})
