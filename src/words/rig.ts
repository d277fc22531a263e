import { spoken } from "./language"

/** The sheet of the rig's parts. `part` is what one is called, `to` the heading it stands under. */
export const rig = spoken("rig", {
  about:
    "Every part with its mass, its nose-down moment, its place from the grip and its share of the whole moment. A part's name opens its numbers.",
  /** Columns. */
  part: "Part",
  mass: "Mass",
  noseDown: "Nose-down",
  place: "Place from the grip",
  share: "Share",
  /** The last row. */
  together: "Together",
  asShown: "at the pose shown",
  /** Headings beside the mounts. */
  accessories: "Accessories",
  bow: "Bow",
  /** Beside a heading with nothing below it. */
  empty: "empty",
  add: "+ Add",
  addTo: (to: string) => `Add to ${to}`,
  addWhat: (to: string) => `What to add to ${to}`,
  /** What an accessory is called at first. */
  accessory: "accessory",
  name: "Name",
  nameNeeded: "An accessory needs a name",
  hangs: "Hangs on a",
  joints: { hinge: "hinge", ball: "ball joint" },
  boxed: "A box with a size, not a point",
  pairArms: "Change both arms of a V-bar together",
  arms: { left: "Left arm", right: "Right arm" },
  addArm: { left: "Add a left arm", right: "Add a right arm" },
  removeArm: { left: "Remove the left arm", right: "Remove the right arm" },
  up: "Move up",
  down: "Move down",
  duplicate: "Duplicate",
  remove: "Remove",
  /** Said once it is done. */
  added: (part: string, to: string) => `${part} added to ${to}`,
  renamed: "Renamed",
  movedUp: (part: string) => `${part} moved up`,
  movedDown: (part: string) => `${part} moved down`,
  duplicated: (part: string) => `${part} duplicated`,
  removed: (part: string) => `${part} removed`,
  armAdded: { left: "left arm added", right: "right arm added" },
  armRemoved: { left: "left arm removed", right: "right arm removed" },
})
