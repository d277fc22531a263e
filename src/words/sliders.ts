import { spoken } from "./language"

/** The sheet of sliders. */
export const sliders = spoken("sliders", {
  label: "Sliders",
  hint: "Drag to try things out, or type into a box; Escape gives it up. The Rig and Bow sheets have more numbers.",
  /** Headings of groups. */
  pose: "How it is held",
  bow: "Bow and archer",
  /** Short names where the number's own is too long for a slider. */
  stemLength: "Swing stem length",
  bobMass: "Swing bob mass",
  elbow: "Draw elbow up",
  /** A number with the part it belongs to: "rod, length". */
  ofPart: (part: string, number: string) => `${part}, ${number}`,
})
