import { spoken } from "./language"

/** The printed card: one page with everything that is set on a bow. Lengths, masses and angles come with their units. */
export const setupCard = spoken("setupCard", {
  title: "Setup card",
  paper: "Paper",
  /** Sizes of paper. */
  a4: "A4",
  letter: "Letter",
  print: "Print…",
  nameless: "Setup without a name",
  parts: "Parts and settings",
  /** Headings of the columns of the list. */
  part: "Part",
  setting: "Setting",
  mass: "Mass",
  /** Over the three columns below it. */
  screw: "Screws in, from the grip",
  ahead: "ahead",
  up: "up",
  right: (unit: string) => `right, ${unit}`,
  held: "At brace, level",
  drawn: "At full draw, level",
  target: "Against the target",
  noTarget: "No target is set.",
  certainty: "Measured or assumed",
  notes: "Notes",
  cautions: "Cautions",
  accessories: (list: string) => `Also on the bow: ${list}`,
  /** Between the things of that list, each with its mass. */
  between: "; ",
  /** Under the code. */
  code: "Opens this setup on a phone",
  codeLess: "Opens this setup without its notes, readings and log",
  /** At the two drawings. */
  fromRight: "from the right",
  fromAbove: "from above",
  drawing: "From the right and from above, to one scale. Lengths are true; numbers are those of the list.",
  noParts: "No rig: the bow is bare.",
  cut: "The whole of the notes is in the file.",
  /** At the brace height's line in the drawing. */
  brace: (length: string) => `brace ${length}`,
  /** Headings in the list. */
  bothArms: (splay: string, droop: string) => `Both side arms: splay ${splay}, droop ${droop}`,
  /** `mount` is one of the words of `partWords`. */
  bothArmsOn: (mount: string, splay: string, droop: string) =>
    `Both side arms (${mount}): splay ${splay}, droop ${droop}`,
  /** `arm` is its title: "Left arm". */
  arm: (arm: string, splay: string, droop: string) => `${arm}: splay ${splay}, droop ${droop}`,
  /** How a mount is turned, after where it is. */
  pitch: (angle: string) => `pitch ${angle}`,
  yaw: (angle: string) => `yaw ${angle}`,
  /** How a swing weight is set. */
  hinge: (stem: string, stop: string) => `stem ${stem}, hinge, stop ${stop}`,
  ball: (stem: string, stop: string) => `stem ${stem}, ball, stop ${stop}`,
  /** Turn resistance about each axis, and after its number how many times that of the bow without its rig. */
  turning: {
    pitch: "Turn resistance, pitch",
    yaw: "Turn resistance, yaw",
    roll: "Turn resistance, roll",
  },
  timesBare: (times: string) => `${times}× bare bow`,
  /** A number where it was asked to be: in its target, or below its limit. */
  inside: "inside",
  within: "within",
  insideAssumed: "inside, if the riser is as assumed",
  withinAssumed: "within, if the riser is as assumed",
  /** The bow in a line, commas between. */
  recurve: "Recurve",
  compound: "Compound",
  peak: (force: string, letOff: string) => `${force} peak, ${letOff} let-off`,
  drawLength: (length: string) => `draw length ${length}`,
  braceHeight: (length: string) => `brace height ${length}`,
  nockHeight: (length: string) => `nock height ${length}`,
  rightHanded: "right-handed",
  leftHanded: "left-handed",
  /** Whether the numbers are those of the real bow; `n` readings, `shown` as they are written. */
  elbow: "The elbow's elevation is an assumption unless it was measured.",
  unread: "Assumed: every number is as it was entered; nothing was read off the real bow.",
  unused: (n: number, shown: string) =>
    `Assumed: the figures do not use the ${shown} reading${n === 1 ? "" : "s"} that were taken.`,
  measured: (n: number, shown: string) =>
    `Measured: the riser is fitted to ${shown} reading${n === 1 ? "" : "s"} of the real bow; each ± holds 95 % of the time if the readings are as sure as they say.`,
  /** What of the riser no reading determined. */
  assumed: (what: string) => `As assumed: ${what}.`,
  entered: "The parts of the rig are as entered.",
})
