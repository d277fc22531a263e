import { spoken } from "./language"

/** What all plots say. */
export const plot = spoken("plot", {
  /** A plot for a screen reader: its name, and that a cursor moves along it. */
  readAlong: (name: string) => `${name}, read along the curve`,
  /** Under the axis of time. */
  time: "time, s",
  /** At the mark of how the bow is held. */
  now: "now",
  /** At the end of the line of the setup held to compare. */
  held: "held",
  /** Button: the plot's numbers as a file. */
  save: "Save CSV",
})
