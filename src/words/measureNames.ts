import { spoken } from "./language"

/** What the numbers of a reading and of a tried setup are called: labels of fields. */
export const measureNames = spoken("measureNames", {
  mass: "mass on the scale",
  /** An error of one standard deviation. */
  error: "give or take",
  slope: "slope, front up",
  cant: "cant, top to the right",
  pointError: "point, give or take",
  swings: "whole swings",
  seconds: "time for all",
  amplitude: "swing to each side",
  line: "length of the lines",
  /** From a line of a twist to the balance point. */
  radius: "line to balance point",
  radiusError: "distance, give or take",
  rating: "how it felt",
  score: "score",
  group: "group size",
})
