import { spoken } from "./language"

/** Why a lesson's file cannot be shown; the place in the file stands before each. Keys and numbers are as in the file. */
export const lessonFaults = spoken("lessonFaults", {
  /** Gap: what was given in place of a lesson, quoted. */
  noObject: (given: string) => `${given} given; a lesson is one JSON object`,
  otherFormat: (given: string, format: string) => `${given} given; a lesson file says "${format}"`,
  newer: (version: string, known: string) =>
    `${version} given; this bench reads up to ${known}. The lesson was written for a newer bench: update this one`,
  manyScenes: (given: string, most: string) => `${given} given; at most ${most} scenes are taken`,
  sceneMissing: "is missing; the first step needs a scene",
  sceneUnknown: (given: string, known: string) => `"${given}" given; one of this lesson's scenes is needed: ${known}`,
  /** A place in a setup that a place in the lesson describes: "steps[1].predict.next, its rig[0].chain[0].innerMm". */
  within: (place: string, inner: string) => `${place}, its ${inner}`,
  noNumber: "this scene has no such number",
  keyUnknown: (key: string) => `"${key}" given; this scene has no such number`,
  keyEmpty: (key: string) => `"${key}" given; this setup has no such number`,
  untouched: "given in a step that lets nothing be touched; add touch: true",
  spanTurned: (to: string, from: string) => `${to} given; no less than ${from} is needed`,
  oneForm: "one of becomes, times or changes is needed",
  /** `told` is what each number that was foretold does, as `goes` says it. */
  noneTrue: (...told: readonly string[]) =>
    `none of the choices is what the numbers say, one is needed. ${told.join("; ")}`,
  moreTrue: (count: string, ...told: readonly string[]) =>
    `${count} of the choices are what the numbers say, one is needed. ${told.join("; ")}`,
  goes: (number: string, from: string, to: string) => `${number} goes from ${from} to ${to}`,
  controlTurned: (to: string, from: string) => `${to} given; more than ${from} is needed`,
  controlOutside: (from: string, to: string, begins: string) =>
    `${from} to ${to} given, but a step that lets it be touched begins at ${begins}`,
  /** Placeholders, with their braces: `{now massG}`. */
  noGoal: (given: string) => `${given} given, but this step has none`,
  placeholder: (given: string) =>
    `${given} given; {goal}, or {now …}, {held …}, {change …}, {times …} or {next …} with the key of a number is needed`,
  nothingNext: (given: string) => `${given} given, but nothing is foretold here`,
  tellsAnswer: (given: string) => `${given} given, which would tell the answer; the key of a setting is needed`,
  nothingHeld: (given: string) => `${given} given, but no setup is held here to compare with`,
  called: (given: string, key: string) => `${given} given; no number of this setup is called "${key}"`,
})
