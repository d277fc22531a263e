import { spoken } from "./language"

/** "Back swing weight" in the middle of a sentence. */
const within = (name: string): string => `the ${name.charAt(0).toLowerCase()}${name.slice(1)}`

/** The sheet on slopes: what hangs where, net lift against slope, weights in motion, the flattest hang. */
export const hills = spoken("hills", {
  picture: {
    heading: "What the picture shows",
    noSwing: "This rig has no swing weight. Add one on the Rig sheet, or let the search below hang one.",
    /** `angle` is "12.5°". */
    hillRises: (angle: string) =>
      `The hillside rises ${angle} toward the target, so the front is raised by as much. The bow turns; gravity and the plumb line do not.`,
    hillFalls: (angle: string) =>
      `The hillside falls ${angle} toward the target, so the front is lowered by as much. The bow turns; gravity and the plumb line do not.`,
    noHill: "Level ground: the target is as high as the archer.",
  },
  /** How the bow is held, at the beginning of a sentence on a weight. */
  held: {
    level: "Held level",
    raised: (angle: string) => `Front raised ${angle}`,
    lowered: (angle: string) => `Front lowered ${angle}`,
    right: (angle: string) => `top canted ${angle} right`,
    left: (angle: string) => `top canted ${angle} left`,
    /** On the level, and canted. */
    onlyCanted: (canted: string) => `Level, ${canted}`,
    both: (slope: string, canted: string) => `${slope}, ${canted}`,
  },
  /** Where a swing weight hangs. `held` is how the bow is held, `name` the weight's own: "Back swing weight". */
  hangs: {
    onStop: (held: string, name: string, down: string, plumb: string) =>
      `${held}: ${within(name)} leans on its stop, ${down} from the bow's own down and ${plumb} short of plumb.`,
    hinged: (held: string, name: string, leans: string, plumb: string) =>
      `${held}: ${within(name)} hangs ${leans} in the bow's own frame; its hinge turns in the bow's plane only, so the cant leaves it ${plumb} from plumb.`,
    down: (held: string, name: string) =>
      `${held}: ${within(name)} hangs straight down, in the bow's own frame and in the world.`,
    aside: (held: string, name: string, down: string) =>
      `${held}: ${within(name)} hangs ${down} to the side in the bow's own frame, though plumb in the world.`,
    plumb: (held: string, name: string, leans: string) =>
      `${held}: ${within(name)} hangs ${leans} in the bow's own frame, though plumb in the world.`,
    /** How it leans. */
    straight: "straight down",
    toArcher: (angle: string) => `${angle} toward the archer`,
    toTarget: (angle: string) => `${angle} toward the target`,
  },
  slopes: {
    heading: "Net lift on slopes, at full draw",
    name: "Net lift against slope",
    /** Under the axis of slopes. */
    along: "slope, ° (front down − / up +)",
    netLift: (unit: string) => `net lift, ${unit}`,
    /** At the ends of lines. */
    rig: "this rig",
    locked: "locked",
    without: "without",
    /** The reading: a slope, "15° up", and the net lift there. */
    at: (slope: string, lift: string) => `${slope}: net lift ${lift}.`,
    atWithHeld: (slope: string, lift: string, held: string) => `${slope}: net lift ${lift}; the held setup ${held}.`,
    swingAt: (slope: string, lift: string, locked: string, without: string) =>
      `${slope}: net lift ${lift}; locked ${locked}, without it ${without}.`,
    swingAtWithHeld: (slope: string, lift: string, locked: string, without: string, held: string) =>
      `${slope}: net lift ${lift}; locked ${locked}, without it ${without}; the held setup ${held}.`,
    spread: (degrees: number) => `Spread over ±${degrees}°, this rig`,
    spreadLocked: "The same, weight locked",
    spreadWithout: "The same, without it",
    spreadHeld: "The setup held to compare",
    spreadNote: "The spread is the largest less the smallest net lift; 0 is a bow that holds alike on every slope.",
    /** Which holds flattest: the weight hanging free against locked, then the bow without it. */
    takes: {
      flatter: (size: string, without: string) =>
        `Hanging free, the weight takes ${size} off the spread of the locked one; without it the bow would be flatter, with ${without}.`,
      lessFlat: (size: string, without: string) =>
        `Hanging free, the weight takes ${size} off the spread of the locked one; without it the bow would be less flat, with ${without}.`,
    },
    adds: {
      flatter: (size: string, without: string) =>
        `Hanging free, the weight adds ${size} to the spread of the locked one; without it the bow would be flatter, with ${without}.`,
      lessFlat: (size: string, without: string) =>
        `Hanging free, the weight adds ${size} to the spread of the locked one; without it the bow would be less flat, with ${without}.`,
    },
    /** Headings of the table; numbers in it keep these units. */
    csv: {
      slope: "slope deg",
      net: "net lift N·m",
      locked: "net lift locked N·m",
      without: "net lift without swing weight N·m",
      held: "net lift of the held setup N·m",
    },
  },
  motion: {
    heading: "Swing weight in motion",
    headingOfSeveral: "Swing weights in motion",
    closeUp: "Close-up of",
    still: (name: string) =>
      `${name}: at this cant its ball joint leans sideways on its stop. It counts as locked and is left out.`,
    to: "To a slope of",
    rate: "No faster than, each second",
    start: "Start",
    /** The same button while the bow moves. */
    instead: "Go there instead",
    reset: "Reset",
    figuresStay: "While this plays, the big figures stay those of the bow as it is held.",
    back: "Step back",
    on: "Step on",
    /** `time` is "1.20 s". */
    inPicture: (time: string) => `${time} in the picture`,
    before:
      "The bow in the main picture is moved with it, and goes back to how it is held once that is over. Dashed: the weight locked in its joint where it hangs now. The traces run once the bow moves.",
    /** `list`: "1: Left side swing weight. 2: Right side swing weight". */
    sharedNames: (list: string) => `${list}. Lines that lie on each other have one name.`,
    listed: (number: number, name: string) => `${number}: ${name}`,
    angles: "Angle from plumb against time",
    fromPlumb: "from plumb, °",
    moments: "Nose-down moment against time",
    noseDown: (unit: string) => `nose-down, ${unit}`,
    momentNote:
      "The moment is what the weight brings on the grip, with all it takes to move it. Dashed: the weight locked where it started.",
    momentNoteOfSeveral:
      "The moment is what all the weights together bring on the grip, with all it takes to move them; thin, each by itself. Dashed: all of them locked where they started.",
    /** At the ends of lines and at marks; `numbers`: "1 + 2". */
    bow: "bow",
    weight: "weight",
    locked: "locked",
    lockedOf: (numbers: string) => `locked ${numbers}`,
    free: "free",
    allFree: "all free",
    allLocked: "all locked",
    bowStill: "bow still",
    /** In the small picture. */
    plumb: "plumb",
    toTarget: "to the target →",
    /** The reading: a time, how the bow is held, where the weights are, and the moments free and locked. */
    at: (time: string, bow: string, weight: string, free: string, locked: string) =>
      `${time}: bow ${bow}, weight ${weight}; nose-down ${free} free, ${locked} locked.`,
    atOfSeveral: (time: string, bow: string, weights: string, free: string, locked: string) =>
      `${time}: bow ${bow}, ${weights}; nose-down together ${free} free, ${locked} locked.`,
    numbered: (number: number, where: string) => `${number} ${where}`,
    /** Where a weight is in the reading. */
    isPlumb: "plumb",
    ahead: (angle: string) => `${angle} ahead of plumb`,
    behind: (angle: string) => `${angle} behind plumb`,
    byFriction: (where: string) => `${where}, held by friction`,
    onStop: (where: string) => `${where}, on its stop`,
    /** Headings of the table; numbers in it keep these units. `of` is a weight's name. */
    csv: {
      time: "time s",
      slope: "slope deg",
      weight: "weight",
      fromPlumb: (of: string) => `${of} from plumb deg`,
      inBow: (of: string) => `${of} in the bow's frame deg`,
      freeOf: (of: string) => `${of} nose-down moment free N·m`,
      lockedOf: (of: string) => `${of} nose-down moment locked N·m`,
      free: "nose-down moment free N·m",
      locked: "nose-down moment locked N·m",
    },
  },
  flattest: {
    heading: "Flattest hang",
    note: "Tries every place, stem and bob for the least spread of the net lift. Joint, stop and the bob's size stay.",
    what: "What to hang",
    all: "All swing weights on the rig, as one",
    fresh: "A new swing weight",
    /** Headings of a range: from, to, in steps of. */
    stem: "Stem",
    bob: "Bob",
    from: "from",
    to: "to",
    step: "in steps of",
    where: "Where to hang it",
    noMount: "This bow has no mount to hang a weight from.",
    search: "Search",
    cancel: "Cancel",
    /** The bar that fills while a search goes on. */
    tries: "Tries made",
    /** A number of a range in a complaint. */
    ofStem: { from: "Stem, from", to: "Stem, to", step: "Stem, steps" },
    ofBob: { from: "Bob, from", to: "Bob, to", step: "Bob, steps" },
    wrong: (which: string, why: string) => `${which}: ${why}.`,
    /** How far a search came, and the spread before any of it. */
    allTried: (total: number, spread: string) =>
      `All ${total} tries made. The best at each place; the spread as it is now is ${spread}.`,
    stopped: (tried: number, total: number, spread: string) =>
      `Stopped after ${tried} of ${total} tries. The best at each place; the spread as it is now is ${spread}.`,
    changed: "The bow has changed since: search again to try one.",
    tryIt: "Try it",
    /** The same button for a screen reader: place, stem and bob. */
    tryThis: (hang: string) => `Try: ${hang}`,
    hung: (hang: string) => `${hang} hung. Undo takes it back.`,
    size: (stem: string, bob: string) => `stem ${stem}, bob ${bob}`,
    effect: (spread: string, mass: string) => `spread ${spread}; the whole bow ${mass}`,
    /** Places to hang from. `mount` is "back"; it and the V-bar's name are "" where they need not be said. */
    chainEnd: (mount: string) => `End of the ${mount} chain`,
    bothArms: (mount: string, vbar: string) => [mount, vbar, "both arms"].filter((word) => word !== "").join(" "),
  },
})
