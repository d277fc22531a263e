import { spoken } from "./language"

/** The Measure sheet: its two pages, and the session that measures the bow. */
export const measureSheet = spoken("measureSheet", {
  pages: { label: "Your own bow", session: "Measure it", log: "Tried setups" },
  intro:
    "Scale, hook and stopwatch make the bow on the bench your bow. Limbs, string and rig are taken as entered; the riser is what is looked for.",
  finding: {
    heading: "What the readings say",
    caption:
      "The bow as it is rigged now, with the measured riser; ± holds 95 times in 100 if the readings are as sure as they say",
    mass: "Mass",
    forward: "Balance point, forward",
    up: "Balance point, up",
    right: "Balance point, right",
    pitch: "Turn resistance, pitch",
    yaw: "Turn resistance, yaw",
    roll: "Turn resistance, roll",
    riser: "The riser itself",
    riserCaption: "The fitted riser",
    /** After a tick. */
    applied: "The bow on the bench has this riser. Every number shows its ±; a ± ? where no reading determines it.",
    nowApplied: "The measured riser is on the bow.",
    notApplied: "The bow on the bench has another riser yet.",
  },
  next: {
    heading: "What to measure next",
    /** After a sentence on how well the balance point is known; a list of readings follows. */
    wouldMake: "One more reading would make that:",
    weigh: "Weigh the bow",
    hangFrom: (point: string) => `Hang it from: ${point}`,
    /** What a reading would make of it. */
    to: (within: string) => `to ${within}`,
    /** A button, before the reading where it is read aloud. */
    setUp: "Set up",
  },
  take: {
    heading: "Take a reading",
    headingOfChange: (reading: number) => `Change reading ${reading}`,
    which: "Which",
    /** In front of what a reading tells. */
    tells: "It tells:",
    hungFrom: "Hung from",
    swingsAbout: "Swings about",
    howSure: "How sure the reading is",
    giveOrTake: "Give or take: two readings in three are nearer than this.",
    note: "Note",
    add: "Add the reading",
    keep: "Keep the change",
    clear: "Clear",
    leave: "Leave it as it was",
    added: "Reading added.",
    changed: (reading: number) => `Reading ${reading} changed.`,
    /** What must yet be typed, by its labels; "the point" among them. */
    stillToCome: (labels: string) => `Still to come: ${labels}.`,
    /** Between those labels. */
    between: "; ",
    thePoint: "the point",
    measured: "What is measured",
    riggedNow: "bow with its rig, as it is now",
    riggedThen: "bow with its rig, as it was then",
    bareNow: "bow, as it is now",
    about: "About",
    cantNotRead: "Cant not read: the reading then says nothing across",
  },
  point: {
    another: "Another place",
    fromGrip: (place: string) => `From the grip: ${place}`,
    /** Labels of three fields. */
    forward: "forward of the grip",
    above: "above the grip",
    right: "to the right",
    tap: "Tap it in the picture",
    tapping: "Tap the place on the bow… (press to stop)",
    taken: (place: string) => `Point taken: ${place}`,
  },
  tilt: {
    use: "Use this device's tilt sensor",
    zeroFirst:
      "First zero it: lay the device flat on the bow's side, screen outwards, and fix it there. Hold the bow level and upright, the string along a plumb line, until it is at rest.",
    hang: "Leave the device where it is, hang the bow and let it come to rest.",
    side: "The screen looks to the archer's",
    right: "Right",
    left: "Left",
    notZeroed: "Not zeroed yet",
    now: (slope: string, cant: string) => `Slope ${slope}, cant ${cant}`,
    atRest: "at rest",
    asking: "asking…",
    moving: "moving…",
    setZero: "Set zero",
    setZeroAgain: "Set zero again",
    take: "Take the tilt",
    off: "Sensor off",
    taken: (slope: string, cant: string) => `Tilt taken: slope ${slope}, cant ${cant}`,
    restForZero: "At rest. Zero can be set.",
    restForTilt: "At rest. The tilt can be taken.",
  },
  watch: {
    /** On the button, before the first tap and after it. */
    first: "Tap here once each swing, the same way",
    next: "Tap at each swing",
    hint: "Space and Enter do as well. The first tap starts the watch.",
    startOver: "Start over",
    /** Announced at every tenth. */
    counted: (swings: number) => `${swings} swings`,
  },
  list: {
    heading: "Readings",
    /** After the name of the reading, in buttons and switches where they are read aloud. */
    reading: (reading: number) => `reading ${reading}`,
    title: (reading: number, kind: string) => `${reading}. ${kind}`,
    fromGrip: (place: string) => `from the grip ${place}`,
    /** After a warning sign. */
    mountGone: "Its rig hung from a mount that the bow no longer has: it does not count.",
    leftOut: "Left out: it does not count in the fit.",
    /** A switch. */
    counts: "Counts",
    change: "Change",
    remove: "Remove",
    nowCounts: (reading: number) => `reading ${reading} counts`,
    nowLeftOut: (reading: number) => `reading ${reading} left out`,
    removed: (reading: number) => `reading ${reading} removed; Undo brings it back`,
  },
})
