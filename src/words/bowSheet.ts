import { spoken } from "./language"

/** The sheet on the bow itself: its kind, its targets, its mounts, its name and the notes on it. */
export const bowSheet = spoken("bowSheet", {
  sections: {
    bow: "Bow",
    targets: "Targets",
    archer: "Archer",
    riser: "Riser",
    limbs: "Limbs",
    stringAndArrow: "String and arrow",
    string: "String",
    arrow: "Arrow",
    mounts: "Mounts",
    words: "Name and notes",
  },
  kind: "Kind of bow",
  kinds: { recurve: "recurve", compound: "compound" },
  kindHint: "Switching keeps all but the limbs, and is one Undo away.",
  wrap: "The string lies on the limbs near brace",
  /** Beside the switch of a target. */
  targets: {
    forwardMm: "Balance point ahead of the grip",
    upMm: "Balance point above the grip",
    sideMm: "Balance point to the right",
    massMaxG: "Mass",
    netLiftNm: "Net lift at full draw",
  },
  /** Announced; `title` is one of the targets. */
  targetSet: (title: string) => `Target for ${title.toLowerCase()} set`,
  targetDropped: (title: string) => `Target for ${title.toLowerCase()} dropped`,
  from: "From",
  to: "To",
  atMost: "At most",
  mountsHint: "While you are at a mount here, it can be dragged in the picture too.",
  mountUsed: "Carries a part of the rig.",
  addMount: {
    front: "Add a front mount",
    upper: "Add an upper mount",
    lower: "Add a lower mount",
    back: "Add a back mount",
  },
  removeMount: {
    front: "Remove the front mount",
    upper: "Remove the upper mount",
    lower: "Remove the lower mount",
    back: "Remove the back mount",
  },
  name: "Name of the setup",
  notes: "Notes",
})
