import { spoken } from "./language"

/**
 * What can be wrong with a file. Each follows the place it is about, as in "bow.kind: is missing". Keys and values of
 * the file stay as the file has them; `given` is what stands there, as `sceneFaults` quotes it.
 */
export const fileFaults = spoken("fileFaults", {
  unknownKey: "is not a key of this format; check its spelling",
  /** `allowed`: the values there are, with commas between. */
  oneOf: (given: string, allowed: string) => `${given} given; one of ${allowed} is needed`,
  noneOf: (allowed: string) => `is missing; one of ${allowed} is needed`,
  kindObject: (given: string, key: string, allowed: string) =>
    `${given} given; an object with "${key}" (${allowed}) is needed`,
  noKindObject: (key: string, allowed: string) => `is missing; an object with "${key}" (${allowed}) is needed`,
  kind: (key: string, given: string, allowed: string) => `"${key}" is ${given}; one of ${allowed} is needed`,
  noKind: (key: string, allowed: string) => `"${key}" is missing; one of ${allowed} is needed`,
  longText: (most: number) => `too long; at most ${most} characters`,
  longList: (most: number) => `too long; at most ${most} entries`,
  shortText: (least: number) => `too short; at least ${least} characters`,
  shortList: (least: number) => `too short; at least ${least} entries`,
  noName: "is empty; a name is needed",
  /** `shape` is one of those below. */
  shape: (given: string, shape: string) => `${given} given; ${shape} is needed`,
  noShape: (shape: string) => `is missing; ${shape} is needed`,
  shapes: {
    string: "text in quotes",
    object: "an object",
    array: "a list",
    tuple: "a list of numbers",
    boolean: "true or false",
    number: "a number",
    other: "something else",
  },
  /** Of whatever no other sentence is about. */
  unreadable: "cannot be read",
  /** A reading says what was on the hook under the key "on". */
  noRig: 'is missing; on "rigged" says there was one',
  strayRig: (on: string) => `given, but on "${on}" says there was none`,
  notAScene: (given: string) => `${given} given; a scene is one JSON object`,
  format: (given: string, format: string) => `${given} given; a scene file says "${format}"`,
  version: (given: string, newest: number) => `${given} given; a whole number from 1 to ${newest} is needed`,
  newer: (given: string, newest: number) =>
    `${given} given; this bench reads up to ${newest}. The file was saved by a newer bench: update this one`,
  empty: "the file is empty",
  notJson: "not JSON",
  /** `needed` is one of those below. */
  notJsonAt: (line: number, column: number, needed: string) => `not JSON: line ${line}, column ${column}: ${needed}`,
  endsHere: (needed: string) => `the file ends here; ${needed}`,
  json: {
    value: "a value is needed",
    valueOrEnd: 'a value or "]" is needed',
    key: "a key in double quotes is needed",
    keyOrEnd: 'a key in double quotes or "}" is needed',
    colon: '":" is needed',
    commaOrBracket: '"," or "]" is needed',
    commaOrBrace: '"," or "}" is needed',
    end: "nothing more may follow",
    control: "no line break or other control character may stand in a text",
    backslash: 'a backslash stands before ", \\, /, b, f, n, r, t or u with four hexadecimal digits only',
    unclosed: "the text that begins here has no closing quote",
  },
  /** Entries of lists that the page numbers from 1, named in front of what is wrong with them. */
  reading: (number: number) => `Reading ${number}`,
  setup: (number: number) => `Setup ${number}`,
})
