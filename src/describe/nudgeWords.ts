import type { HoldChoice } from "../scene/nudge"

/** Every fixed word of the nudge sheet, in one place. */
export const nudgeWords = {
  heading: "Nudge",
  kind: "What happens",
  kinds: { knock: "Knock", push: "Steady push", drop: "Nose drop" },
  motion: "Which way",
  motions: { pitch: "Pitch", yaw: "Yaw", roll: "Roll" },
  impulse: "Knock",
  push: "Push",
  lasting: "Lasts",
  leaves: "Arrow leaves after",
  positive: {
    pitch: "Plus raises the front, minus drops it.",
    yaw: "Plus turns the front to the left, minus to the right.",
    roll: "Plus turns the top to the right, minus to the left.",
  },
  alike: "Each bow is at full draw with its arrow, level and upright, and turns about the grip.",
  caution: "For looking at, not for trying: nobody knocks or pushes a bow that somebody draws.",
  swings: "Swing weights count as in a quick turn: they are dragged along by their joints only.",
  dropNote:
    "The shot is over and the hand opens: each bow, let down and without its arrow, turns about the grip under its own weight. Shown up to 30°, while the weight's arm is about what it was.",
  hold: "What holds the bow",
  holds: { free: "Free hand", string: "String held", loose: "Loose grip", own: "Own" },
  numbers: "Stiffness and damping",
  watching: "How it turns",
  sideBySide: "Side by side",
  nobody: "Hold a setup to compare, and both are nudged alike, side by side.",
  now: "this bow",
  held: "held",
  play: "Play",
  pause: "Pause",
  back: "Step back",
  on: "Step on",
  time: "Time after the nudge",
  timeOfDrop: "Time after the hand opens",
  speed: "Speed",
  speeds: { "1": "Real time", "10": "10× slower", "100": "100× slower" },
  calm: "Less motion is asked for, so the time goes by steps.",
  views: { pitch: "from the side", yaw: "from above", roll: "from behind" },
  traces: "How far each bow turns",
  /** Which way a turn goes, plus and minus: of the front in pitch and yaw, of the top in roll. */
  sides: { pitch: ["up", "down"], yaw: ["left", "right"], roll: ["right", "left"] },
  others: "What else turns",
  coupling: "A rig that is not even about the grip turns about other axes too.",
  nothingElse: "Nothing else turns: these rigs are even about this axis.",
  target: "Where the arrow would have gone",
  distance: "Target at",
  rigid:
    "An estimate, as from a rigid bow: the arrow flies straight where the bow points at the moment it leaves. The push of the string, the arrow's bending and its flight are left out.",
  drops: "How far the front drops",
  after: "After",
  dropFormula:
    "½·(nose-down moment ÷ pitch resistance)·t²: heavier in front drops faster, more turn resistance slower.",
  save: "Save CSV",
} as const

/** What a named hold is, honestly: where its numbers come from. */
export const holdMeaning: Readonly<Record<Exclude<HoldChoice, object> | "own", string>> = {
  free: "Nothing holds the bow back: how it turns by itself.",
  string:
    "The drawn string resists pitch and yaw: 2·T·L²/ℓ, with its tension T, the draw L and its length ℓ from tip to nock. A rough figure: hand and fingers count as still, limbs as stiff. Nothing resists roll. The damping is assumed.",
  loose: "Assumed: a soft hand that lets the bow move and settle. No measured source.",
  own: "The same numbers for both bows.",
}
