import type { Measurement } from "../scene/schema"

/** What a coach is told of one kind of reading before taking it. */
export interface StepWords {
  /** On the switch: one word. */
  readonly verb: string
  readonly how: readonly string[]
  readonly tells: string
  /** How close such a reading usually is. Common practice, no source. */
  readonly usual: string
}

export const stepWords: Readonly<Record<Measurement["kind"], StepWords>> = {
  scale: {
    verb: "Weigh",
    how: [
      "Stand a tin on the kitchen scale, set it to zero, and lay the bow across the tin.",
      "Nothing else may touch: no limb on the table, no finger on the string.",
    ],
    tells: "The mass, and with the mass of everything else the riser's.",
    usual: "A kitchen scale is good to 2–5 g.",
  },
  hang: {
    verb: "Hang",
    how: [
      "Hang the bow from one point on a cord that carries ten times its weight, over something soft.",
      "Let it come to rest, and read how far it is tilted from level and upright: by a phone on its side, or by eye against a plumb line.",
      "Or lay it on a finger or an edge and move that until it balances: level is then the tilt, the edge the point.",
    ],
    tells: "A line that the balance point is on. Two points well apart, say string and rod, give the balance point.",
    usual: "The tilt is good to half a degree, the point to 2 mm.",
  },
  swing: {
    verb: "Swing",
    how: [
      "Hang the bow from a smooth rod or an edge, so that it swings about one axis and does not twist.",
      "Let it swing a hand's width to each side, and tap once each time it passes the same way, 10 to 20 times.",
      "Take swinging weights off, or tie them: they count as fixed.",
    ],
    tells: "Turn resistance about that axis: pitch, roll or yaw. Nearer to the balance point tells more.",
    usual: "A thumb is good to 0.15 s over all the swings.",
  },
  twist: {
    verb: "Twist",
    how: [
      "Hang the bow on two equal upright cords, one to each side of the balance point and equally far from it.",
      "Twist it a little and let go, and tap once each time it passes the same way, 10 to 20 times.",
      "Lying on its side it tells pitch, upright yaw, front up or down roll.",
    ],
    tells: "Turn resistance about the upright line through the balance point: the surest way for yaw and roll.",
    usual: "A thumb is good to 0.15 s over all, the cords' distance to 2 mm.",
  },
}

/** Shown with every step that hangs a bow up. */
export const HANGING_CAUTION =
  "Keep feet and heads from under the bow, check the cord and its knots each time, and never draw a bow that hangs. A strung bow has its string checked first."

/** Why a phone's sensor gives nothing, for the person holding the phone. */
export const sensorWords = {
  missing: "This browser gives no tilt sensor. Type the tilt instead.",
  refused:
    "The tilt sensor was not allowed. The browser's settings for this page can allow it; or type the tilt instead.",
  silent: "The tilt sensor says nothing: this device may have none. Type the tilt instead.",
  askew: "From this the phone cannot tell forward: lay it flat on the bow's side, screen outwards.",
} as const

/** What tapping has come to, in a line. */
export function tappedText(count: number, seconds: number, missed: number, doubled: number): string {
  const asides = [
    missed > 0 ? `${missed} without a tap, counted` : "",
    doubled > 0 ? `${doubled} double ${doubled === 1 ? "tap" : "taps"} left out` : "",
  ].filter((aside) => aside !== "")
  const all = `${count} swings in ${seconds.toFixed(2)} s, ${(seconds / count).toFixed(3)} s each`
  return asides.length === 0 ? all : `${all} (${asides.join("; ")})`
}
