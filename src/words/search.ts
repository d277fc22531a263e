import { spoken } from "./language"

/** A search for setups: what is asked, how far it is, what came of it. Also said by the command line. */
export const search = spoken("search", {
  /** After "Best is". */
  best: {
    nearest: "nearest to the middle of the targets",
    lightest: "lightest",
    steadiest: "most turn resistance",
    steadyForMass: "most turn resistance for its mass",
  },
  /** Limits, in a sentence; with a capital they are titles. */
  limits: {
    reachForward: "how far the rig reaches forward",
    reachSide: "how far the rig reaches to a side",
    pitch: "pitch resistance",
    yaw: "yaw resistance",
    roll: "roll resistance",
  },
  /** Of combinations: how many there are (`all`) and how much of them is done (`share`, "42.5 %"). */
  covered: {
    underway: (share: string, all: string) => `${share} of ${all} combinations covered.`,
    proved: (all: string) => `All ${all} combinations are covered: this list is proved.`,
    stopped: (share: string, all: string) =>
      `Stopped with ${share} of ${all} combinations covered: the best so far, not proved.`,
  },
  outcome: {
    /** Before one of the sentences about what is covered. */
    brokeOff: (trouble: string) => `The search broke off (${trouble}).`,
    nothingYet: "Nothing found yet.",
    none: (all: string) => `No setup from this kit meets every limit; all ${all} combinations are covered.`,
  },
  /** What an answer belongs to that the page has left behind since. */
  earlier: {
    bow: "bow",
    kit: "kit",
    question: "question",
    /** Around one of these, or several. */
    one: (what: string) => `the earlier ${what}`,
    list: (earlier: string, then: string) =>
      `This list belongs to ${earlier}: ${then}. It proves nothing for what is asked now; search again.`,
    answer: (earlier: string, then: string) =>
      `This answer belongs to ${earlier}: ${then}. It proves nothing for what is asked now; search again.`,
    coveredThen: (all: string) => `all ${all} combinations were covered then`,
    partlyCoveredThen: (share: string, all: string) => `${share} of ${all} combinations were covered then`,
  },
  /** Between the parts of a list whose parts may have commas. */
  between: "; ",
  lostOne: (why: string) => `A worker of this search was lost (${why}); another does its part again.`,
  lostSome: (workers: number, why: string) =>
    `${workers} workers of this search were lost (${why}); others do their parts again.`,
  slept: (time: string) => `The page was asleep for ${time}; the search goes on from where it was.`,
  cutOff:
    "The last search was cut off when the page was closed or put to sleep. The kit and what was wanted are kept: search again.",
  /** The ends of a band in the wrong order; “to” and “from” stand beside its two fields. */
  noBand: (title: string, from: string, to: string) =>
    `${title}: from ${from} to ${to} is no band; “to” must not be less than “from”.`,
  quoted: (field: string) => `“${field}”`,
  wrongField: (field: string) => `Not searched: ${field} cannot be taken as it stands. Correct it first.`,
  wrongFields: (fields: string) => `Not searched: ${fields} cannot be taken as they stand. Correct them first.`,
  /** The end of a list; `first` may be several with commas between them. */
  and: (first: string, last: string) => `${first} and ${last}`,
  /** One limit when nothing meets them all. `title` is the limit; `by` is how far off, and both numbers have their unit. */
  missed: {
    nothing: (title: string) => `${title}: there is nothing to build.`,
    outOfReach: (title: string, nearest: string, by: string) =>
      `${title}: out of reach of this kit; the nearest is ${nearest}, ${by} off.`,
    alone: (title: string) => `${title}: can be met by itself; the other limits cannot all be met together.`,
    binds: (title: string, nearest: string, by: string) =>
      `${title}: binds; with the other limits kept the nearest is ${nearest}, ${by} off.`,
    met: (title: string) => `${title}: is met.`,
  },
  recheck: "Recheck every thread after a change.",
  accuracy:
    "The figures are as good as the masses and lengths entered: they are worked out, not measured. Check the balance on the bow.",
  /** What a rig is made of, from the mounts to the arms of a V-bar; `parts` is a list. */
  rig: {
    bare: "nothing on the bow",
    front: (parts: string) => `Front: ${parts}`,
    back: (parts: string) => `Back: ${parts}`,
    upper: (parts: string) => `Upper: ${parts}`,
    lower: (parts: string) => `Lower: ${parts}`,
    nothing: "nothing",
    /** `angles` is "40°/5°". */
    arm: (angles: string, parts: string) => `${angles}: ${parts}`,
    left: (vbar: string, arm: string) => `${vbar} (left ${arm})`,
    right: (vbar: string, arm: string) => `${vbar} (right ${arm})`,
    alike: (vbar: string, arm: string) => `${vbar} (both ${arm})`,
    unlike: (vbar: string, left: string, right: string) => `${vbar} (left ${left}; right ${right})`,
  },
})
