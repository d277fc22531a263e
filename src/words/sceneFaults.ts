import { spoken } from "./language"

/**
 * What can be wrong with a scene while it is worked on. Each follows the place it is about, as in "bow.riser.massG: is
 * missing". Keys and values of the file stay as the file has them. A gap of type P is a number that is put in words
 * later, in the units chosen. What only a file can have wrong is in `fileFaults`.
 */
export const sceneFaults = spoken("sceneFaults", {
  at: (place: string, fault: string) => `${place}: ${fault}`,
  /** What was given, when it is a text: as it was written. */
  text: (text: string) => `"${text}"`,
  nothing: "nothing",
  list: (length: number) => `a list of ${length}`,
  object: "an object",
  number: <P>(given: P, from: P, to: P): (string | P)[] => [
    given,
    " given; a number in ",
    from,
    " … ",
    to,
    " is needed",
  ],
  whole: <P>(given: P, from: P, to: P): (string | P)[] => [
    given,
    " given; a whole number in ",
    from,
    " … ",
    to,
    " is needed",
  ],
  noNumber: <P>(from: P, to: P): (string | P)[] => ["is missing; a number in ", from, " … ", to, " is needed"],
  noWhole: <P>(from: P, to: P): (string | P)[] => ["is missing; a whole number in ", from, " … ", to, " is needed"],
  drawTooShort: <P>(given: P, brace: P): (string | P)[] => [
    given,
    " given; more than the brace height, ",
    brace,
    ", is needed",
  ],
  boreTooWide: <P>(given: P, outer: P): (string | P)[] => [
    given,
    " given; less than the outer diameter, ",
    outer,
    ", is needed",
  ],
  wrongWayRound: <P>(from: P, to: P): (string | P)[] => [from, " to ", to, " given; the smaller number comes first"],
  noBody: "no body has these radii of gyration: none squared may exceed the other two squared together",
  noMount: (mount: string) => `"${mount}" given, but the bow has no such mount; add mounts.${mount}`,
  mountTaken: (mount: string) => `"${mount}" carries a chain already; one chain a mount`,
})
