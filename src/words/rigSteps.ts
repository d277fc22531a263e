import { spoken } from "./language"

/** From one rig to another as a list for the screwdriver. */
export const rigSteps = spoken("rigSteps", {
  /** Where something is to be done, as a heading: mounts, arms, and arms of another mount than the front one. */
  mounts: { front: "Front", upper: "Upper", lower: "Lower", back: "Back" },
  sides: {
    left: "Left side",
    right: "Right side",
    both: "Both sides",
  },
  sidesOf: {
    left: (mount: string) => `${mount}, left side`,
    right: (mount: string) => `${mount}, right side`,
    both: (mount: string) => `${mount}, both sides`,
  },
  line: (where: string, ...steps: readonly string[]) => `${where}: ${steps.join("; ")}`,

  /** `number` is "" or, for a second one, " 2"; `piece` what it is. */
  extender: {
    put: (number: string, piece: string) => `fit an extender${number}: ${piece}`,
    swap: (number: string, piece: string) => `swap the extender${number} for ${piece}`,
    off: (number: string) => `take off the extender${number}`,
  },
  vbar: {
    put: (number: string, piece: string) => `fit a V-bar${number}: ${piece}`,
    swap: (number: string, piece: string) => `swap the V-bar${number} for ${piece}`,
    off: (number: string) => `take off the V-bar${number}`,
  },
  rod: {
    put: (number: string, piece: string) => `fit a rod${number}: ${piece}`,
    swap: (number: string, piece: string) => `swap the rod${number} for ${piece}`,
    off: (number: string) => `take off the rod${number}`,
  },
  damper: {
    put: (number: string, piece: string) => `fit a damper${number}: ${piece}`,
    swap: (number: string, piece: string) => `swap the damper${number} for ${piece}`,
    off: (number: string) => `take off the damper${number}`,
  },
  swing: {
    put: (number: string, piece: string) => `fit a swing weight${number}: ${piece}`,
    swap: (number: string, piece: string) => `swap the swing weight${number} for ${piece}`,
    off: (number: string) => `take off the swing weight${number}`,
  },
  /** A piece by the name it was given and its length. */
  named: (name: string, length: string) => `“${name}”, ${length}`,
  stem: (length: string) => `stem ${length}`,

  more: (count: number, mass: string) => `+${count} ${count === 1 ? "disc" : "discs"} of ${mass}`,
  fewer: (count: number, mass: string) => `\u2212${count} ${count === 1 ? "disc" : "discs"} of ${mass}`,

  armOff: "take off the arm",
  armSet: (splay: string, droop: string) => `set to splay ${splay}, droop ${droop}`,
  wider: (by: string, splay: string) => `${by} wider, to splay ${splay}`,
  closer: (by: string, splay: string) => `${by} closer, to splay ${splay}`,
  lower: (by: string, droop: string) => `${by} lower, to droop ${droop}`,
  higher: (by: string, droop: string) => `${by} higher, to droop ${droop}`,
})
