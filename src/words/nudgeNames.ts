import { spoken } from "./language"

/** What the numbers of a nudge are called: labels of fields. */
export const nudgeNames = spoken("nudgeNames", {
  impulse: "knock",
  push: "push",
  lasting: "push lasts",
  leaves: "arrow leaves the bow after",
  pitch: "against pitch",
  yaw: "against yaw",
  roll: "against roll",
  damping: "damping",
  noResistance: "no turn resistance about some axis; a bow that is nudged needs some about every axis",
})
