import { spoken } from "./language"

/** The dialog of preferences. */
export const settings = spoken("settings", {
  title: "Settings",
  close: "Close",
  note: "Kept in this browser. Handedness belongs to the bow and is saved with it.",
  masses: "Masses",
  grams: "grams",
  ounces: "ounces",
  lengths: "Lengths",
  millimetres: "millimetres",
  inches: "inches",
  forces: "Forces",
  newtons: "newtons",
  pounds: "pounds",
  language: "Language",
  theme: "Look",
  /** Of language and look. */
  auto: "as the device",
  light: "light",
  dark: "dark",
  /** Heading of a list of switches, then each. */
  shows: "The picture shows",
  overlays: {
    plumb: "Plumb line and moment arm",
    target: "Balance target",
    ellipsoid: "Inertia ellipsoid",
    arcs: "Pitch, roll and yaw arrows",
    fullDraw: "Balance of the drawn bow",
    ground: "Ground, and the hillside on a slope",
    labels: "Labels",
  },
  arms: "V-bar arms",
  pairArms: "Change both arms together",
})
