import { spoken } from "./language"

/** The 3D picture: its name for a screen reader by where it is seen from, its labels, and why it may be missing. */
export const picture3d = spoken("picture3d", {
  side: "3D picture of the bow, seen from the archer's right, the target to the right",
  top: "3D picture of the bow, seen from above, the target to the right",
  archer: "3D picture of the bow, seen from behind the archer, looking at the target",
  free: "3D picture of the bow, seen from where you turned it",
  keys: "Arrow keys turn the view, Shift with arrow keys moves it, plus and minus zoom, Home shows the whole bow from the side.",
  /** Why there is no 3D picture, to stand inside a sentence. */
  noWebgl: "WebGL is switched off or missing",
  lost: "the graphics card stopped drawing",
  broken: "the 3D picture stopped working",
  grip: "grip",
  ellipsoid: "ellipsoid of the same mass and turn resistance, half size",
  pitch: "pitch",
  yaw: "yaw",
  roll: "roll",
  /** On the card of the part pointed at. */
  noseDown: (moment: string) => `${moment} nose-down`,
  noseUp: (moment: string) => `${moment} nose-up`,
  share: (percent: string) => `${percent} of the whole bow's`,
})
