import { spoken } from "./language"

/** The numbers of the first view: the three big ones, the balance sheet, how the bow is held. */
export const figures = spoken("figures", {
  key: "Key figures",
  /** A big figure's name and, in small beside it, where or how. */
  balance: "Balance point",
  ahead: "ahead of the grip",
  /** On a bow that is tilted. */
  alongBow: "ahead, along the bow",
  net: "Net at full draw",
  heldLevel: "held level",
  mass: "Mass",
  asHeld: "as it is held",
  /** Headings of the balance sheet. */
  atPose: "At the pose",
  atFullDraw: "At full draw, level",
  turning: "Turn resistance about the grip",
  more: "More numbers",
  principal: "Bare bow, and principal moments of the whole",
  whatIsThis: "What is this?",
  /** Tips of "± 1.2" and "± ?" beside a number. */
  known: "At 95 %, by what was measured on the real bow, if the readings are as sure as they say.",
  open: "What was measured on the real bow does not determine this number.",
  /** What turns in pitch, yaw and roll. */
  motions: { pitch: "front up and down", yaw: "front left and right", roll: "canting" },
  turnScale: (end: string) => `The mark on each bar is the bare bow, 1×; the bar's end is ${end}×.`,
  /** The sliders below the picture, and the button that sets each back. */
  draw: "Draw",
  slope: "Slope",
  cant: "Cant",
  toBrace: "Back to brace",
  toLevel: "Level",
  toUpright: "Upright",
  reset: (slider: string, to: string) => `${slider}: ${to.toLowerCase()}`,
})
