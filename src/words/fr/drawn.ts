import type { drawn as english } from "../drawn"

export const drawn: typeof english = {
  about: (amount) => `environ ${amount}`,
  lift: (moment) => `levée ${moment}`,
  weight: (moment) => `poids ${moment}`,
  net: (moment, way) => `nette ${moment}, ${way}`,
  short: (net, far) => `${net}\u00a0: ${far} avant l’équilibre`,
  past: (net, far) => `${net}\u00a0: ${far} au-delà de l’équilibre`,
  hand: {
    higher: (far, how) => `appui ${far} plus haut, ${how}`,
    lower: (far, how) => `appui ${far} plus bas, ${how}`,
    enlarged: (times) => `dessiné ${times}`,
    tooFar: "plus qu’un grip ne permet",
  },
}
