import { spoken } from "./language"

/** What the parts of a bow and its rig are called. */
export const partWords = spoken("partWords", {
  /** Kinds of rig part, in the middle of a sentence. */
  kinds: {
    extender: "extender",
    rod: "rod",
    damper: "damper",
    weights: "weights",
    vbar: "V-bar",
    swing: "swing weight",
  },
  /** The places on a riser that carry a chain: where something is, in the middle of a sentence. */
  mounts: { front: "front", upper: "upper", lower: "lower", back: "back" },
  mountTitles: { front: "Front mount", upper: "Upper mount", lower: "Lower mount", back: "Back mount" },
  sides: { left: "left", right: "right" },
  /** Which arm: its side, and in front of it the mount and the V-bar's number where they are needed, else "". */
  arm: (side: string, mount: string, vbar: string) => [mount, vbar, side].filter((word) => word !== "").join(" "),
  armTitle: (arm: string) => `${arm} arm`,
  /** A part by its mount: "front rod". */
  onMount: (mount: string, kind: string) => `${mount} ${kind}`,
  /** A part by the arm it hangs on: "left side rod". */
  onArm: (arm: string, kind: string) => `${arm} side ${kind}`,
  /** Things that are always there, as headings. */
  bow: "Bow",
  riser: "Riser",
  limbs: "Limbs",
  string: "String",
  arrow: "Arrow",
  archer: "Archer",
  target: "Target",
  /** The name of a scene that was not opened from anywhere. */
  newBow: "New bow",
  /** How the bow is held: draw, slope and cant. */
  pose: "Pose",
})
