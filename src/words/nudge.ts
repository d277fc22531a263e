import { spoken } from "./language"

/** The sheet on nudges. */
export const nudge = spoken("nudge", {
  heading: "Nudge",
  kind: "What happens",
  kinds: { knock: "Knock", push: "Steady push", drop: "Nose drop" },
  motion: "Which way",
  motions: { pitch: "Pitch", yaw: "Yaw", roll: "Roll" },
  /** The same in the middle of a sentence, at a line's end and in a table's heading. */
  motionsWithin: { pitch: "pitch", yaw: "yaw", roll: "roll" },
  impulse: "Knock",
  push: "Push",
  lasting: "Lasts",
  leaves: "Arrow leaves after",
  /** A slider beside the field of the same name, for a screen reader. */
  slider: (name: string) => `${name}, slider`,
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
  hold: {
    heading: "What holds the bow",
    names: { free: "Free hand", string: "String held", loose: "Loose grip", own: "Own" },
    /** What a named hold is, honestly: where its numbers come from. */
    meaning: {
      free: "Nothing holds the bow back: how it turns by itself.",
      string:
        "The drawn string resists pitch and yaw: 2·T·L²/ℓ, with its tension T, the draw L and its length ℓ from tip to nock. A rough figure: hand and fingers count as still, limbs as stiff. Nothing resists roll. The damping is assumed.",
      loose: "Assumed: a soft hand that lets the bow move and settle. No measured source.",
      own: "The same numbers for both bows.",
    },
    /** Why "String held" is not offered: the setups, by name, that have none. */
    noString: (setup: string) =>
      `“String held” is not offered: “${setup}” is a compound, whose cables are not modelled, so the tension of the string is not known.`,
    noStrings: (one: string, other: string) =>
      `“String held” is not offered: “${one}” and “${other}” are compounds, whose cables are not modelled, so the tension of the string is not known.`,
    numbers: "Stiffness and damping",
    /** The numbers of a hold in a sentence; where the bows differ, after the bow's name. */
    of: (bow: string, sentence: string) => `${bow}: ${sentence}`,
    sentence: (against: string, damping: string) => `Stiffness ${against}; damping ${damping}.`,
    none: "none",
    againstBoth: (stiffness: string) => `${stiffness} against pitch and yaw`,
    againstPitch: (stiffness: string) => `${stiffness} against pitch`,
    againstYaw: (stiffness: string) => `${stiffness} against yaw`,
    againstRoll: (stiffness: string) => `${stiffness} against roll`,
    /** `share` is a percentage. */
    ofCritical: (damping: string, share: string) => `${damping}, ${share} of critical in pitch`,
  },
  watching: "How it turns",
  sideBySide: "Side by side",
  nobody: "Hold a setup to compare, and both are nudged alike, side by side.",
  /** The two bows, in headings, at lines' ends and in sentences. */
  bows: { now: "this bow", held: "held" },
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
  /** How much larger than they are turns are drawn. */
  trueTurn: "Drawn as far as it turns.",
  enlarged: (times: number) => `Drawn turning ${times} times as far as it does.`,
  bothEnlarged: (times: number) => `Drawn turning ${times} times as far as it does, both bows alike.`,
  traces: "How far each bow turns",
  /** Which way a turn goes, after its size: of the front in pitch and yaw, of the top in roll. */
  ways: {
    pitch: { plus: "up", minus: "down" },
    yaw: { plus: "left", minus: "right" },
    roll: { plus: "right", minus: "left" },
  },
  /** Plots, and their upright axes. */
  againstTime: { pitch: "Pitch against time", yaw: "Yaw against time", roll: "Roll against time" },
  axes: { pitch: "pitch, ° (up + / down −)", yaw: "yaw, ° (left + / right −)", roll: "roll, ° (right + / left −)" },
  anyTurn: "turn, °",
  arrowLeaves: "arrow leaves",
  /** The reading at a moment, "16 ms": each bow and its turns. */
  at: (moment: string, bows: string) => `${moment}: ${bows}.`,
  bothBows: (one: string, other: string) => `${one}; ${other}`,
  bowTurns: (bow: string, turns: string) => `${bow} ${turns}`,
  others: "What else turns",
  coupling: "A rig that is not even about the grip turns about other axes too.",
  nothingElse: "Nothing else turns: these rigs are even about this axis.",
  target: "Where the arrow would have gone",
  distance: "Target at",
  /** Where an arrow lands beside the aim. */
  right: (far: string) => `${far} right`,
  left: (far: string) => `${far} left`,
  high: (far: string) => `${far} high`,
  low: (far: string) => `${far} low`,
  onAim: "on the aim",
  /** `across` is a face's diameter. */
  face: (across: string) => `Ten rings on ${across}, the size that is usual at this distance.`,
  nearFace: (across: string, times: number) =>
    `The middle of a face of ${across}, the size that is usual at this distance, seen ${times} times nearer.`,
  rigid:
    "An estimate, as from a rigid bow: the arrow flies straight where the bow points at the moment it leaves. The push of the string, the arrow's bending and its flight are left out.",
  drops: "How far the front drops",
  after: "After",
  dropFormula:
    "½·(nose-down moment ÷ pitch resistance)·t²: heavier in front drops faster, more turn resistance slower.",
  /** Headings of the table; numbers in it keep these units. */
  csv: { time: "time s", turn: (bow: string, motion: string) => `${bow} ${motion} deg` },
})
