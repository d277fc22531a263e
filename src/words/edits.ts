import { spoken } from "./language"

/**
 * Changes by their names in the history, as in `acts`, and why one is refused. `part` is "front rod", or the name that
 * the coach gave it; `place` is the number of an entry in a list.
 */
export const edits = spoken("edits", {
  newBow: "new bow",
  notes: "notes",
  handed: { right: "right-handed", left: "left-handed" },
  target: "target",
  /** Mounts within a sentence. */
  mounts: { front: "front mount", upper: "upper mount", lower: "lower mount", back: "back mount" },
  added: (part: string) => `${part} added`,
  removed: (part: string) => `${part} removed`,
  moved: (part: string) => `${part} moved`,
  duplicated: (part: string) => `${part} duplicated`,
  renamed: "renamed",
  swing: { hinge: "swing weight on a hinge", ball: "swing weight on a ball" },
  /** An accessory that is a box from now on, or a point. */
  sized: (part: string) => `${part} given a size`,
  unsized: (part: string) => `${part} made a point`,
  wrap: "string lies on the limbs",
  noWrap: "string free of the limbs",
  kinds: { recurve: "recurve bow", compound: "compound bow" },
  swingHung: (place: string) => `swing weight hung: ${place}`,
  logged: "setup noted in the log",
  logChanged: (place: string) => `log entry ${place} changed`,
  logRemoved: (place: string) => `log entry ${place} removed`,
  /** `name` is what the tried setup was called; "" where it was not. */
  triedAgain: (name: string) => `tried setup put on the bow${name === "" ? "" : `: ${name}`}`,
  readingAdded: "reading added",
  readingChanged: (place: string) => `reading ${place} changed`,
  readingOut: (place: string) => `reading ${place} left out`,
  readingIn: (place: string) => `reading ${place} taken in`,
  readingRemoved: (place: string) => `reading ${place} removed`,
  riserFromReadings: "measured riser put on the bow",
  /** What a button says that does this. */
  applyReadings: "Put on the bow",
  /** Of a setup that a search found, where it is compared with. */
  foundSetup: "the found setup",
  /** Refusals. */
  nowhere: "nothing stands there in this scene",
  armThere: "this side has its arm already",
  compoundWrap: "a compound's string lies on its cams",
  otherBow: "the bow has changed since the search; search again",
  noEntry: "there is no such entry",
  noReading: "no reading counts yet",
  noRiser: "no riser fits the readings",
})
