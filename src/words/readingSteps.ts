import { spoken } from "./language"

/** How a reading is taken: the step's switch, what to do, what it tells, and how close it usually is. */
export const readingSteps = spoken("readingSteps", {
  scale: {
    verb: "Weigh",
    how: {
      first: "Stand a tin on the kitchen scale, set it to zero, and lay the bow across the tin.",
      next: "Nothing else may touch: no limb on the table, no finger on the string.",
    },
    tells: "The mass, and with the mass of everything else the riser's.",
    usual: "A kitchen scale is good to 2–5 g.",
  },
  hang: {
    verb: "Hang",
    how: {
      first: "Hang the bow from one point on a cord that carries ten times its weight, over something soft.",
      next: "Let it come to rest, and read how far it is tilted from level and upright: by a phone on its side, or by eye against a plumb line.",
      or: "Or lay it on a finger or an edge and move that until it balances: level is then the tilt, the edge the point.",
    },
    tells: "A line that the balance point is on. Two points well apart, say string and rod, give the balance point.",
    usual: "The tilt is good to half a degree, the point to 2 mm.",
  },
  swing: {
    verb: "Swing",
    how: {
      first: "Hang the bow from a smooth rod or an edge, so that it swings about one axis and does not twist.",
      next: "Let it swing a hand's width to each side, and tap once each time it passes the same way, 10 to 20 times.",
      weights: "Take swinging weights off, or tie them: they count as fixed.",
    },
    tells: "Turn resistance about that axis: pitch, roll or yaw. Nearer to the balance point tells more.",
    usual: "A thumb is good to 0.15 s over all the swings.",
  },
  twist: {
    verb: "Twist",
    how: {
      first: "Hang the bow on two equal upright cords, one to each side of the balance point and equally far from it.",
      next: "Twist it a little and let go, and tap once each time it passes the same way, 10 to 20 times.",
      axes: "Lying on its side it tells pitch, upright yaw, front up or down roll.",
    },
    tells: "Turn resistance about the upright line through the balance point: the surest way for yaw and roll.",
    usual: "A thumb is good to 0.15 s over all, the cords' distance to 2 mm.",
  },
  /** A caution with every step that hangs a bow up. */
  hanging:
    "Keep feet and heads from under the bow, check the cord and its knots each time, and never draw a bow that hangs. A strung bow has its string checked first.",
  /** Why a phone's sensor gives nothing. */
  sensor: {
    missing: "This browser gives no tilt sensor. Type the tilt instead.",
    refused:
      "The tilt sensor was not allowed. The browser's settings for this page can allow it; or type the tilt instead.",
    silent: "The tilt sensor says nothing: this device may have none. Type the tilt instead.",
    askew: "From this the phone cannot tell forward: lay it flat on the bow's side, screen outwards.",
  },
  /** What tapping once a swing has come to: `each` is the time of one. In brackets after it what else there was. */
  tapped: (swings: number, seconds: string, each: string) => `${swings} swings in ${seconds} s, ${each} s each`,
  missed: (swings: number) => `${swings} without a tap, counted`,
  doubled: (taps: number) => `${taps} double ${taps === 1 ? "tap" : "taps"} left out`,
  /** Between those in the brackets. */
  between: "; ",
  /** The drawings: what each shows, and short words in it, which have little room. */
  picture: {
    scale:
      "Seen from above: the bow lies on its side on a tin that stands on a kitchen scale; limbs, string and rod are free.",
    hang: "The bow hangs at rest from a cord at one point, tilted; a plumb line from the cord runs through the balance point. A cushion lies below.",
    swing: "The bow hangs from a smooth edge and swings a little to each side about one axis.",
    twist:
      "The bow lies level on two equal upright cords, one to each side of the balance point, and twists about the upright line between them.",
    limbsFree: "limbs free",
    stringFree: "string free",
    rodFree: "rod free",
    tin: "tin",
    zeroed: "scale, set to 0",
    onePoint: "one point, a strong cord",
    balancePoint: "balance point",
    below: "straight below",
    /** One sentence on two lines. */
    edge: "a smooth rod or edge",
    asAxis: "as the axis",
    /** One sentence on two lines. */
    swings: "10–20 swings,",
    eachWay: "a hand's width each way",
    cords: "equal cords",
    equallyFar: "equally far from the middle",
  },
})
