import { spoken } from "./language"

/** Words in the pictures of the bow, and the names of what can be dragged there. */
export const picture = spoken("picture", {
  /** The flat picture, for a screen reader. */
  flat: "The bow from the right and from above, to scale",
  above: "from above",
  toTarget: "to the target",
  /** The zone of wanted balance points. */
  zone: "balance target",
  /** The moment arm of a bow that is tilted. */
  onLevel: (arm: string) => `${arm} on the level`,
  /** A part and which of its numbers a handle drags. */
  handle: (part: string, number: string) => `${part} ${number}`,
  stem: "stem length",
  length: "length",
  splay: "splay",
  droop: "droop",
  height: "height",
  forward: "forward",
  tilt: "tilt up",
  turn: "turn left",
  draw: "Draw",
  nock: "Nock height above the grip",
  elbow: "Draw elbow above the arrow line",
})
