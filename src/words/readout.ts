import { spoken } from "./language"

/** What the live numbers are called. */
export const readout = spoken("readout", {
  mass: "Mass",
  forward: "Balance point ahead of grip",
  up: "Balance point above grip",
  side: "Balance point to the right",
  arm: "Moment arm",
  armSide: "Side arm",
  noseDown: "Nose-down moment",
  cant: "Cant moment to the right",
  fingers: "Force on the fingers",
  pitch: "Pitch",
  yaw: "Yaw",
  roll: "Roll",
  free: "Pitch, swing weight free",
  /** Of the three principal moments, by their size. */
  smallest: "Smallest",
  middle: "Middle",
  largest: "Largest",
  stripped: "Bow without its rig",
  net: "Net at full draw",
  lift: "Lift of the line of pull",
  drawnNoseDown: "Nose-down moment",
  balanced: "Balanced forward",
  drawnForward: "Balance point, drawn",
  gripShift: "Grip pressure shift",
  hold: "Holding force",
  drawnMass: "Mass, drawn",
})
