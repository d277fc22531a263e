import { spoken } from "./language"

/** Readings of the real bow, the riser that fits them, and how well they do. */
export const readings = spoken("readings", {
  /** What each kind is called, by itself. */
  kinds: { scale: "Weighed", hang: "Hung", swing: "Swung", twist: "Twisted" },
  /** What was on the hook, in the middle of a sentence. */
  on: { riser: "riser alone", bow: "bow without its rig", rigged: "bow with its rig" },
  axes: { pitch: "pitch, front up and down", yaw: "yaw, front left and right", roll: "roll, canting" },
  /** What is looked for. */
  unknown: {
    mass: "riser mass",
    forward: "riser centre, forward",
    up: "riser centre, up",
    side: "riser centre, to the right",
    roll: "riser radius of gyration, roll",
    yaw: "riser radius of gyration, yaw",
    pitch: "riser radius of gyration, pitch",
  },
  /** Under the name of what is looked for. */
  known: {
    yes: "measured",
    partly: "only together with others; kept near what was assumed",
    no: "not measured; kept as assumed",
  },
  /** How a bow hung: its front, and after a comma its cant. */
  level: "level",
  frontUp: (angle: string) => `front ${angle} up`,
  frontDown: (angle: string) => `front ${angle} down`,
  upright: "upright",
  cantedRight: (angle: string) => `canted ${angle} right`,
  cantedLeft: (angle: string) => `canted ${angle} left`,
  cantNotRead: "cant not read",
  swings: {
    pitch: (count: number, time: string) => `${count} swings in ${time}, pitch`,
    yaw: (count: number, time: string) => `${count} swings in ${time}, yaw`,
    roll: (count: number, time: string) => `${count} swings in ${time}, roll`,
  },
  /** Where a bow can hang, in a list. */
  points: {
    grip: "Grip, pivot point",
    nock: "String, at the nock",
    stringTop: "String, upper end",
    stringBottom: "String, lower end",
    end: (part: string) => `${part}, outer end`,
  },
  /** One reading against the fit: what it read, then how far it is off, what is usual, and what would pass unseen. */
  miss: {
    mass: "mass",
    slope: "slope",
    tilt: "sideways tilt",
    ahead: "plumb line, forward",
    aside: "plumb line, to the right",
    time: "time",
    unchecked: (what: string) => `${what}: no other reading checks it`,
    said: (what: string, off: string, usual: string, unseen: string) =>
      `${what}: ${off}; ${usual} is usual; a mistake below ${unseen} may not show`,
    none: "as the fit has it",
    less: (size: string) => `${size} less than the fit`,
    more: (size: string) => `${size} more than the fit`,
  },
  /** The fit as a whole, in sentences. */
  fit: {
    contradict: "The readings contradict each other: no riser fits them.",
    leaveSomeOut: "Check or leave out some.",
    justEnough: "There are just enough readings for what they say: no reading checks another.",
    agree:
      "The readings agree within their errors. Small mistakes pass unseen: each reading says below what size. Wrongly entered limbs or rig may do so too.",
    disagree:
      "The readings disagree more than their errors allow, and no single one left out mends that: more than one is off, they are less sure than they say, or limbs, string or rig are not as entered. The ± below are too small.",
    held: "Read by themselves, the radii of gyration would be those of no body; the nearest ones that exist are taken.",
    /** A scale that showed less than the rest weighs, without a rig on it and with one. */
    lighter: (reading: number, mass: string, rest: string) =>
      `Reading ${reading}, ${mass}, is not above the ${rest} that limbs, string and accessories weigh as entered, so nothing is left for the riser. Check the reading, what was on the scale, and those. Until then neither the numbers below nor their ± hold.`,
    lighterRigged: (reading: number, mass: string, rest: string) =>
      `Reading ${reading}, ${mass}, is not above the ${rest} that limbs, string, accessories and rig weigh as entered, so nothing is left for the riser. Check the reading, what was on the scale, and those. Until then neither the numbers below nor their ± hold.`,
  },
  /** Readings that could be the wrong one. The list in `anyOf` is made of the first two. */
  suspects: {
    reading: (reading: string) => `reading ${reading}`,
    or: (first: string, last: string) => `${first} or ${last}`,
    one: (reading: number) =>
      `Reading ${reading} is far off: without it the others agree. Take it again, or leave it out. Until then neither the numbers below nor their ± hold.`,
    either: (list: string) =>
      `${list}: one of them is far off; take both again. Without any one of them the others agree, so the readings cannot tell which; until then neither the numbers below nor their ± hold.`,
    anyOf: (list: string) =>
      `${list}: one of them is far off; take all of them again. Without any one of them the others agree, so the readings cannot tell which; until then neither the numbers below nor their ± hold.`,
    /** Beside such a reading: the only one, or one of several. */
    mark: "Far off: take it again, or leave it out",
    markOfSeveral: "May be far off: take it again",
  },
  /** How well the balance point is placed; `within` is a length. */
  now: {
    determined: (within: string) =>
      `The balance point of the bow as it is rigged is known to ${within}, forward, up and side together.`,
    undetermined: (within: string) =>
      `The readings alone do not determine the balance point of the bow as it is rigged. It is assumed to be within ${within}, forward, up and side together, as risers usually are.`,
    unread: (within: string) =>
      `Nothing measured says yet where the balance point of the bow as it is rigged lies. It is assumed to be within ${within}, forward, up and side together, as risers usually are.`,
  },
})
