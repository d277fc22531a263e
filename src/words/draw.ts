import { spoken } from "./language"

/** The sheet on drawing: the draw curve, why the balance changes when drawn, and the line of pull. */
export const draw = spoken("draw", {
  play: {
    heading: "Draw, hold, let down",
    play: "Play",
    pause: "Pause",
    /** Button: plays on after a pause. */
    goOn: "Go on",
    /** In the history, and in "Undo: …". */
    gesture: "draw, hold, let down",
    /** Said when it begins, and when it is over. */
    begun: "Drawing, holding, letting down",
    over: "Let down",
  },
  dryFire: "Never release a drawn bow without an arrow. Let it down with the hand on the string.",
  curve: {
    heading: "Draw curve",
    name: "Force against draw",
    sketchName: "Force against draw, a sketch",
    sketch: "A sketch: cams are not modelled. Only its start, its peak and its holding force are this bow's own.",
    /** Instead of the reading, while the drawn curve is that of the limbs before a change. */
    behind: "Dotted: the curve before this change. It follows when the change rests.",
    along: (unit: string) => `drawn back from the grip, ${unit}`,
    force: (unit: string) => `force, ${unit}`,
    /** At the end of the curve: draw weight, or a compound's holding force, and draw length. */
    end: (weight: string, amo: string) => `${weight} at ${amo} AMO`,
    at: (drawn: string, force: string, energy: string) => `Drawn ${drawn}: ${force}, ${energy} stored`,
    atWithHeld: (drawn: string, force: string, energy: string, held: string) =>
      `Drawn ${drawn}: ${force}, ${energy} stored; the held bow ${held}`,
    stored: "Energy stored at full draw",
    fullness: "Fullness, W/(F·draw)",
    fullnessNote:
      "Fullness is the stored energy over draw force times the way from brace to full draw: a half for a straight line.",
    weight: "Draw weight",
    /** A compound's draw weight. */
    atPeak: (weight: string) => `${weight} at the peak`,
    amo: "AMO draw length",
    string: "String",
  },
  /** Headings of the curve's table; numbers in it keep these units. */
  csv: {
    draw: "draw from grip mm",
    force: "force N",
    energy: "stored energy J",
    held: "force of the held bow N",
  },
  why: {
    heading: "Why the balance changes when drawn",
    caption: "Held level and upright. The lines add up to the last one.",
    cause: "Cause",
    /** Headings of columns; their unit follows. */
    forward: "Balance point forward,",
    raises: "Raises the front,",
    /** Instead of a number. */
    noMass: "no mass moves",
    rows: {
      brace: "At brace",
      limbs: "Limbs move back",
      string: "String drawn back",
      arrow: "Arrow added",
      pull: "Line of pull",
      full: "At full draw",
    },
    /** In the sentence under the table. */
    causes: { limbs: "the limbs", string: "the string", arrow: "the arrow", pull: "the line of pull" },
    /** The sentence: what the largest cause does to the front, then what all others do to it. */
    mostly: {
      raises: {
        raises: (cause: string, by: string, rest: string) =>
          `Mostly ${cause}: it raises the front by ${by}; all else together raises it by ${rest}.`,
        lowers: (cause: string, by: string, rest: string) =>
          `Mostly ${cause}: it raises the front by ${by}; all else together lowers it by ${rest}.`,
      },
      lowers: {
        raises: (cause: string, by: string, rest: string) =>
          `Mostly ${cause}: it lowers the front by ${by}; all else together raises it by ${rest}.`,
        lowers: (cause: string, by: string, rest: string) =>
          `Mostly ${cause}: it lowers the front by ${by}; all else together lowers it by ${rest}.`,
      },
    },
  },
  pull: {
    heading: "Line of pull",
    lift: "Lift at full draw",
    net: "Net of lift and weight",
    elbow: "Draw elbow above the arrow line",
    nock: "Nock height above the grip",
    /** A slider beside the field of the same name, for a screen reader. */
    slider: (name: string) => `${name}, slider`,
  },
})
