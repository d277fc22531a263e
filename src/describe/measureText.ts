import type { Known, Unknown } from "../core/measure"
import type { MeasureResult, Miss, NamedPoint } from "../scene/measure"
import type { Measurement, Scene } from "../scene/schema"
import { said, type Shown, show, type UnitChoice } from "./format"
import { partTitle } from "./partNames"
import { aboveWords, aheadWords, sideWords } from "./placeWords"

/** What each kind of reading is called, by itself. */
export const kindTitles: Readonly<Record<Measurement["kind"], string>> = {
  scale: "Weighed",
  hang: "Hung",
  swing: "Swung",
  twist: "Twisted",
}

/** What was on the hook, in the middle of a sentence. */
export const onWords: Readonly<Record<Measurement["on"], string>> = {
  riser: "riser alone",
  bow: "bow without its rig",
  rigged: "bow with its rig",
}

export const axisWords: Readonly<Record<"pitch" | "yaw" | "roll", string>> = {
  pitch: "pitch, front up and down",
  yaw: "yaw, front left and right",
  roll: "roll, canting",
}

/** What is looked for, in the order of the fit. */
export const unknownWords: Readonly<Record<Unknown, string>> = {
  mass: "riser mass",
  forward: "riser centre, forward",
  up: "riser centre, up",
  side: "riser centre, to the right",
  roll: "riser radius of gyration, roll",
  yaw: "riser radius of gyration, yaw",
  pitch: "riser radius of gyration, pitch",
}

export const knownWords: Readonly<Record<Known, string>> = {
  yes: "measured",
  partly: "only together with others; kept near what was assumed",
  no: "not measured; kept as assumed",
}

/** "± 1.2", "± ?" where nothing determines it: how far a number may be off, in the unit that stands beside the number. */
export function spreadText(spread: number | undefined, quantity: Shown, units: UnitChoice): string {
  if (spread === undefined) return ""
  return `±\u00a0${Number.isFinite(spread) ? show(spread, quantity, units).text : "?"}`
}

/** "Hung at the string, nock: front 12.0° up, canted 1.0° left": one reading in a line. */
export function readingText(reading: Measurement, units: UnitChoice): string {
  switch (reading.kind) {
    case "scale":
      return said(reading.massG, "mass", units)
    case "hang": {
      const { slopeDeg, cantDeg } = reading
      const slope = slopeDeg === 0 ? "level" : `front ${said(Math.abs(slopeDeg), "angle", units)} ${updown(slopeDeg)}`
      return cantDeg === undefined ? `${slope}, cant not read` : `${slope}, ${cantText(cantDeg, units)}`
    }
    case "swing":
    case "twist":
      return `${reading.count} swings in ${said(reading.seconds, "duration", units)}, ${reading.axis}`
  }
}

const updown = (value: number): string => (value > 0 ? "up" : "down")
const cantText = (degrees: number, units: UnitChoice): string =>
  degrees === 0 ? "upright" : `canted ${said(Math.abs(degrees), "angle", units)} ${degrees > 0 ? "right" : "left"}`

/** "13 mm ahead, 70 mm below, in the middle": a place for the words of a reading. */
export const placeText = ([x, y, z]: readonly [number, number, number], units: UnitChoice): string =>
  [aheadWords(x, units), aboveWords(y, units), sideWords(z, units)].join(", ")

/** What a named place of the bow is called. */
export function pointTitle(scene: Scene, { what, path }: NamedPoint): string {
  switch (what) {
    case "grip":
      return "Grip, pivot point"
    case "nock":
      return "String, at the nock"
    case "string-top":
      return "String, upper end"
    case "string-bottom":
      return "String, lower end"
    case "mount":
    case "accessory":
      return partTitle(scene, path)
    case "end":
      return `${partTitle(scene, path)}, outer end`
  }
}

const missWords: Readonly<Record<Miss["what"], readonly [string, Shown]>> = {
  mass: ["mass", "mass"],
  slope: ["slope", "angle"],
  tilt: ["sideways tilt", "angle"],
  ahead: ["plumb line, forward", "length"],
  aside: ["plumb line, to the right", "length"],
  time: ["time", "duration"],
}

/** "slope 0.3° too much (usual error 0.5°)": how far a reading is from the fit. */
export function missText({ what, by, error, studentised }: Miss, units: UnitChoice): string {
  const [words, quantity] = missWords[what]
  if (studentised === null) return `${words}: no other reading checks it`
  const size = said(Math.abs(by), quantity, units)
  const off = Number.parseFloat(size) === 0 ? "as the fit has it" : `${size} ${by < 0 ? "less" : "more"} than the fit`
  return `${words}: ${off}; ${said(error, quantity, units)} is usual`
}

/** What the fit as a whole has to say for itself, in sentences; worst first. */
export function fitWords({ fit, readings }: MeasureResult): string[] {
  if (!fit.converged) return ["The readings contradict each other: no riser fits them. Check or leave out some."]
  const wrong = readings.find(({ outlier }) => outlier)
  const words: string[] = []
  if (wrong !== undefined) {
    words.push(
      `Reading ${wrong.place + 1} is further off than 3 in 1000 sound ones would be: take it again, or leave it out.`,
    )
  } else if (fit.freedom > 0 && fit.chiSquared > disagreement(fit.freedom)) {
    words.push("The readings disagree more than their errors allow: the ± below are too small.")
  }
  if (fit.freedom === 0) words.push("There are just enough readings for what they say: no reading checks another.")
  if (fit.held)
    words.push(
      "Read by themselves, the radii of gyration would be those of no body; the nearest ones that exist are taken.",
    )
  return words
}

/**
 * Chi squared that one sound session in a hundred exceeds, by Wilson and Hilferty's cube root of it (1931; within 2 % of
 * the table from one degree of freedom on).
 */
export function disagreement(freedom: number): number {
  const NINETY_NINE = 2.3263478740408408
  const spread = 2 / (9 * freedom)
  return freedom * (1 - spread + NINETY_NINE * Math.sqrt(spread)) ** 3
}
