import { spoken } from "./language"

/** What can be typed into a field for numbers, and what is wrong with what was. Ranges have their unit. */
export const typedNumbers = spoken("typedNumbers", {
  number: (from: string, to: string) => `a number from ${from} to ${to}`,
  whole: (from: string, to: string) => `a whole number from ${from} to ${to}`,
  /** `allowed` is one of the two above. */
  refused: (given: string, allowed: string) => `${given} given; ${allowed} is needed`,
  /** `why`: that it can be read two ways. */
  unclear: (why: string, allowed: string) => `${why}; ${allowed} is needed`,
  /** "2,650": may be 2650 or 2.65. */
  twoWays: (typed: string, grouped: string, decimal: string) =>
    `“${typed}” can be read two ways; write ${grouped}, or ${decimal} with a decimal point`,
})
