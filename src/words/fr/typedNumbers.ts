import type { typedNumbers as english } from "../typedNumbers"

export const typedNumbers: typeof english = {
  number: (from, to) => `un nombre entre ${from} et ${to}`,
  whole: (from, to) => `un nombre entier entre ${from} et ${to}`,
  refused: (given, allowed) => `${given} ne convient pas\u00a0; il faut ${allowed}`,
  unclear: (why, allowed) => `${why}\u00a0; il faut ${allowed}`,
  twoWays: (typed, grouped, decimal) =>
    `«\u00a0${typed}\u00a0» peut se lire de deux façons\u00a0; écrire ${grouped}, ou ${decimal} avec un point décimal`,
}
