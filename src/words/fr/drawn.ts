import type { drawn as english } from "../drawn"

export const drawn: typeof english = {
  about: (amount) => `environ ${amount}`,
  lift: (moment) => `levée ${moment}`,
  weight: (moment) => `poids ${moment}`,
  net: (moment, way) => `levée nette ${moment}, ${way}`,
  short: (net, far) => `${net}\u00a0: ${far} avant l’équilibre`,
  past: (net, far) => `${net}\u00a0: ${far} au-delà de l’équilibre`,
  hand: {
    higher: (far, how) => `appui de la main ${far} plus haut, ${how}`,
    lower: (far, how) => `appui de la main ${far} plus bas, ${how}`,
    enlarged: (times) => `dessiné ${times}`,
    tooFar: "plus qu’un grip ne permet",
  },
}
