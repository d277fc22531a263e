import { spoken } from "./language"

/** Beside the drawn balance of a bow at full draw, in the picture. Gaps are amounts with their units. */
export const drawn = spoken("drawn", {
  /** An amount that is only sketched. */
  about: (amount: string) => `about ${amount}`,
  lift: (moment: string) => `lift ${moment}`,
  weight: (moment: string) => `weight ${moment}`,
  /** `way`: "front rises", "front drops", "balanced". */
  net: (moment: string, way: string) => `net ${moment}, ${way}`,
  /** The net, and how far the balance point is from where it would have to be. */
  short: (net: string, far: string) => `${net}: ${far} short of balanced`,
  past: (net: string, far: string) => `${net}: ${far} past balanced`,
  /** How far the pressure of the hand moves on the grip, and how that is drawn. */
  hand: {
    higher: (far: string, how: string) => `hand ${far} higher, ${how}`,
    lower: (far: string, how: string) => `hand ${far} lower, ${how}`,
    /** `times`: "4×". */
    enlarged: (times: string) => `drawn ${times}`,
    tooFar: "more than a grip allows",
  },
})
